// SPDX-License-Identifier: MIT
// What the system refuses while results are written: status 4 and a sentence, or death by the
// signal that was sent; never a part of a file, and nothing beside it.
#include "cli/program.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <string>

using namespace pelt;
using cli_test::Program;
namespace fs = std::filesystem;

namespace {

bool leaves_nothing(const Program& pelt) {
    const fs::directory_iterator all(pelt.folder().path());
    return std::none_of(begin(all), end(all), [](const fs::directory_entry& entry) {
        return entry.path().filename().string().starts_with(".pelt-");
    });
}

constexpr int writing_failed = 4;

} // namespace

TEST_CASE("a limit on the size of files is told, and leaves neither a part nor a temporary") {
    const Program pelt;
    pelt.folder().write("sheet.svg", "old");
    const support::Result result =
        pelt.shell("ulimit -f 1; pelt cut van.yaml film.yaml -q -o sheet.svg");
    CHECK(result.status == writing_failed);
    CHECK(result.errors.find("sheet.svg: cannot be written: File too large") != std::string::npos);
    CHECK(pelt.file("sheet.svg") == "old");
    CHECK(leaves_nothing(pelt));
    const support::Result printed =
        pelt.shell("ulimit -f 1; pelt cut van.yaml film.yaml -q --format svg > out.svg");
    CHECK(printed.status == writing_failed);
    CHECK(printed.errors.find("standard output cannot be written") != std::string::npos);
}

TEST_CASE("a pipe that nobody opens for reading can be interrupted") {
    const Program pelt;
    for (const std::string signal : {"INT", "TERM", "HUP"}) {
        CAPTURE(signal);
        // `pelt` is started by timeout, which also undoes what sh does to SIGINT of what it starts.
        const support::Result result =
            pelt.shell("rm -f pipe.svg; mkfifo pipe.svg; timeout -k 60 -s " + signal +
                       " 3 pelt cut van.yaml film.yaml -q -o pipe.svg -o sheet.txt");
        CHECK(result.status == 124); // by that signal: by the one that cannot be held off it is 137
        CHECK_FALSE(fs::exists(pelt.folder().path() + "/sheet.txt"));
        CHECK(leaves_nothing(pelt));
    }
}

TEST_CASE("a pipe whose reader goes away is told") {
    const Program pelt;
    const support::Result result = pelt.shell(
        "mkfifo pipe.svg; (exec 3< pipe.svg; exec 3<&-) & "
        "pelt cut van.yaml film.yaml -q --format svg --times 300 -o pipe.svg -o sheet.txt");
    // The reader may be gone before or after the pipe has taken all of it.
    CHECK(result.status == writing_failed);
    CHECK(result.errors.find("pipe.svg: cannot be written: Broken pipe") != std::string::npos);
    CHECK_FALSE(fs::exists(pelt.folder().path() + "/sheet.txt"));
    CHECK(leaves_nothing(pelt));
}

TEST_CASE("a link that leads to no file yet stays a link, and the file is made where it leads") {
    const Program pelt;
    const std::string folder = pelt.folder().path();
    fs::create_directory(folder + "/elsewhere");
    fs::create_symlink("elsewhere/second.txt", folder + "/first.txt");
    fs::create_symlink(folder + "/elsewhere/sheet.txt", folder + "/elsewhere/second.txt");
    REQUIRE(pelt({"cut", "van.yaml", "film.yaml", "-q", "-o", "first.txt"}).status == 0);
    CHECK(fs::is_symlink(folder + "/first.txt"));
    CHECK(fs::is_symlink(folder + "/elsewhere/second.txt"));
    CHECK(fs::is_regular_file(fs::symlink_status(folder + "/elsewhere/sheet.txt")));
    CHECK(pelt.file("first.txt") == pelt.file("elsewhere/sheet.txt"));
    // Where it leads into no folder, that is told; and two names of one file are one file.
    fs::create_symlink("nowhere/sheet.txt", folder + "/lost.txt");
    CHECK(pelt({"cut", "van.yaml", "film.yaml", "-o", "lost.txt"}).status == writing_failed);
    CHECK(fs::is_symlink(folder + "/lost.txt"));
    fs::create_symlink("new.txt", folder + "/link.txt");
    CHECK(pelt({"cut", "van.yaml", "film.yaml", "-o", "link.txt", "-o", "new.txt"}).status == 2);
}

TEST_CASE("links that lead round in a circle are told") {
    const Program pelt;
    fs::create_symlink("b.txt", pelt.folder().path() + "/a.txt");
    fs::create_symlink("a.txt", pelt.folder().path() + "/b.txt");
    CHECK(pelt({"cut", "van.yaml", "film.yaml", "-o", "a.txt"}).status == writing_failed);
    CHECK(fs::is_symlink(pelt.folder().path() + "/a.txt"));
}
