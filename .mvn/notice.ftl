Pellucid
This part of it is published under the Apache License, Version 2.0; see LICENSE beside this file.

It holds no part of the works below. It uses them, and whoever installs it gets them too, each
under its own licence:

<#list dependencyMap as entry>
<#assign work = entry.getKey()/>
<#if work.groupId != "dev.pellucid">
* ${work.name} (${work.groupId}:${work.artifactId}) ${work.version}: ${entry.getValue()?join(", ")}
</#if>
</#list>
