package org.codehaus.doxia.sink;

/**
 * What builders of sites up to maven-site-plugin 3.19 hand to a report. They bring it along; newer
 * ones do not, and a class that names it could not be loaded by them without this one.
 */
public interface Sink extends org.apache.maven.doxia.sink.Sink {}
