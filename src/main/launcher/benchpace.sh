#!/bin/sh
# Starts the board with the options beside it: sh benchpace.sh serve --data my-classes
# A first run leaves what Java had to read of the program in benchpace.jsa when the board is closed, and later ones start
# from that. It is tried each time before the board is: one that was cut short would end Java itself.
here=$(CDPATH="" cd -- "$(dirname -- "$0")" && pwd)
jar=$here/benchpace.jar
archive=$here/benchpace.jsa
share=
if [ -e "$archive" ] && java "@$here/benchpace.options" -Xshare:on -XX:+VerifySharedSpaces \
        -XX:SharedArchiveFile="$archive" -XX:ErrorFile=/dev/null -cp "$jar" -version > /dev/null 2>&1; then
    share=-XX:SharedArchiveFile=$archive
elif [ -w "$here" ]; then
    rm -f "$archive"
    share=-XX:ArchiveClassesAtExit=$archive
fi
exec java "@$here/benchpace.options" ${share:+"$share"} -Xlog:cds=off -Xlog:cds+dynamic=off -jar "$jar" "$@"
