package dev.pellucid.engine.folder;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveInputStream;
import org.apache.commons.io.input.BoundedInputStream;

/** Lists what a tar archive holds, as if it were unpacked, and keeps it in memory. */
final class TarListing {
  /** Tar archives are written in whole records of so many bytes, the last one filled up. */
  private static final int TAR_RECORD = 10240;

  private static final String CUT_OFF = "the archive is cut off";

  /** What the library says where an entry ends before its bytes do. */
  private static final String CUT = "Truncated TAR archive";

  private final Listing listing = new Listing();

  private TarListing() {}

  static Texts of(InputStream tar) throws IOException {
    TarListing packed = new TarListing();
    try {
      packed.unpack(tar);
    } catch (IOException broken) {
      // What the stream itself has to say goes on as it is.
      throw CUT.equals(broken.getMessage()) ? new IOException(CUT_OFF, broken) : broken;
    }
    return packed.listing.texts();
  }

  /** Takes from an archive what a lister would find on the disk. */
  private void unpack(InputStream packed) throws IOException {
    BoundedInputStream counted = BoundedInputStream.builder().setInputStream(packed).get();
    TarArchiveInputStream tar = new TarArchiveInputStream(counted, StandardCharsets.UTF_8.name());
    for (TarArchiveEntry entry = tar.getNextEntry(); entry != null; entry = tar.getNextEntry()) {
      if (!entry.isCheckSumOK()) {
        throw new IOException("this is not a tar archive, or it is damaged");
      }
      if (Names.isReached(entry.getName()) && Names.isRead(entry.getName())) {
        unpack(entry, tar);
      }
    }
    // What is left is filling; whoever writes it must be able to end.
    counted.transferTo(OutputStream.nullOutputStream());
    if (counted.getCount() == 0 || counted.getCount() % TAR_RECORD != 0) {
      throw new IOException(CUT_OFF);
    }
  }

  private void unpack(TarArchiveEntry entry, InputStream content) throws IOException {
    String path = entry.getName();
    if (entry.isSymbolicLink()) {
      listing.link(path);
    } else if (entry.isFile()) {
      long size = entry.getSize();
      byte[] bytes = size > Texts.LONGEST ? new byte[0] : content.readNBytes((int) size);
      listing.file(path, new Stored.InMemory(size, bytes));
    }
  }
}
