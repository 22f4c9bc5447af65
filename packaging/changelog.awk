# SPDX-License-Identifier: MIT
# Turns CHANGELOG.md into a changelog of Debian (Policy 4.4): awk -v version=0.1.0 -v packager="N <a@b>"
# -v epoch=SECONDS -f changelog.awk CHANGELOG.md. One entry, of this version; a line a change.

# Prints a change, in lines of at most 78 columns.
function put(text,    count, words, i, line, begin) {
    begin = "  * "
    line = begin
    count = split(text, words, " ")
    for (i = 1; i <= count; ++i) {
        if (line != begin && length(line) + length(words[i]) + 1 > 78) {
            print line
            begin = line = "    "
        }
        line = line (line == begin ? "" : " ") words[i]
    }
    if (text != "")
        print line
}

function finish() {
    put(change)
    change = ""
}

BEGIN {
    print "pelt (" version ") unstable; urgency=medium\n"
}
/^## / {
    finish()
    inside = index($0, "## " version) == 1
    found = found || inside
    next
}
!inside { next }
/^### / || /^$/ { finish(); next }
/^- / { finish(); change = substr($0, 3); next }
{ sub(/^ +/, ""); change = change " " $0 }
END {
    finish()
    if (!found) {
        print "CHANGELOG.md has no section of " version > "/dev/stderr"
        exit 1
    }
    ("LC_ALL=C TZ=UTC date -R -d @" epoch) | getline date
    print "\n -- " packager "  " date
}
