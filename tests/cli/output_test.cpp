// SPDX-License-Identifier: MIT
// Files appear whole or not at all, and what cannot be written is known before the work.
#include "cli/output.hpp"
#include "program.hpp"

#include <doctest/doctest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>

using namespace pelt;
using namespace pelt::cli;
using cli_test::Program;
namespace fs = std::filesystem;

namespace {

std::size_t entries_in(const std::string& folder) {
    return static_cast<std::size_t>(
        std::distance(fs::directory_iterator(folder), fs::directory_iterator()));
}

mode_t mode_of(const std::string& path) {
    struct stat about {};
    REQUIRE(::stat(path.c_str(), &about) == 0);
    return about.st_mode & 0777U;
}

} // namespace

TEST_CASE("files are written, and nothing is left beside them") {
    const support::ScratchFolder folder;
    const std::string a = folder.path() + "/a.txt";
    const std::string b = folder.path() + "/b.txt";
    CHECK_FALSE(write_files({{a, "one"}, {b, std::string("\0\xff", 2)}}).has_value());
    CHECK(support::contents_of(a) == "one");
    CHECK(support::contents_of(b) == std::string("\0\xff", 2));
    CHECK(entries_in(folder.path()) == 2);
}

TEST_CASE("a file that is there is replaced and keeps its permissions") {
    const support::ScratchFolder folder;
    folder.write("a.txt", "a longer text that was here before");
    const std::string path = folder.path() + "/a.txt";
    REQUIRE(::chmod(path.c_str(), 0640) == 0);
    CHECK_FALSE(write_files({{path, "new"}}).has_value());
    CHECK(support::contents_of(path) == "new");
    CHECK(mode_of(path) == 0640);
}

TEST_CASE("a new file gets the permissions that the user's mask leaves") {
    const support::ScratchFolder folder;
    const std::string path = folder.path() + "/a.txt";
    const mode_t before = ::umask(027);
    CHECK_FALSE(write_files({{path, "new"}}).has_value());
    ::umask(before);
    CHECK(mode_of(path) == 0640);
}

TEST_CASE("a link stays a link, and the file behind it is replaced") {
    const support::ScratchFolder folder;
    folder.write("real.txt", "old");
    const std::string link = folder.path() + "/link.txt";
    fs::create_symlink("real.txt", link);
    CHECK_FALSE(write_files({{link, "new"}}).has_value());
    CHECK(fs::is_symlink(link));
    CHECK(support::contents_of(folder.path() + "/real.txt") == "new");
}

TEST_CASE("when one file cannot be written no file is touched") {
    const support::ScratchFolder folder;
    folder.write("a.txt", "old");
    const std::string a = folder.path() + "/a.txt";
    const auto fault = write_files({{a, "new"}, {folder.path() + "/none/b.txt", "new"}});
    REQUIRE(fault.has_value());
    CHECK(fault->severity == Severity::access);
    CHECK(support::contents_of(a) == "old");
    CHECK(entries_in(folder.path()) == 1);
}

TEST_CASE("a device is written to and not replaced") {
    CHECK_FALSE(write_files({{"/dev/null", "gone"}}).has_value());
    CHECK(fs::is_character_file("/dev/null"));
    const auto fault = write_files({{"/dev/full", "no room"}});
    REQUIRE(fault.has_value());
    CHECK(fault->place.source->name == "/dev/full");
}

TEST_CASE("what cannot be written is found without touching it") {
    const support::ScratchFolder folder;
    const std::string fresh = folder.path() + "/fresh.txt";
    CHECK_FALSE(cannot_write(fresh).has_value());
    CHECK_FALSE(fs::exists(fresh));
    CHECK_FALSE(cannot_write("/dev/null").has_value());
    CHECK(cannot_write(folder.path()).has_value());
    CHECK(cannot_write(folder.path() + "/none/fresh.txt").has_value());
    folder.write("file", "");
    CHECK(cannot_write(folder.path() + "/file/fresh.txt").has_value());
}

TEST_CASE("a bad output name stops the program before it reads anything") {
    const auto result = Program()({"cut", "./none.yaml", "./none.yaml", "-o", "/none/sheet.json"});
    CHECK(result.status == 4);
    CHECK(result.errors ==
          "/none/sheet.json: cannot be written: the folder '/none' does not exist\n");
}

TEST_CASE("a file and standard output are both written") {
    const Program pelt;
    const auto plain = pelt({"cut", "van.yaml", "film.yaml", "--format", "json"});
    const auto both =
        pelt({"cut", "van.yaml", "film.yaml", "--format=json", "-ox.json", "-o", "-"});
    CHECK(both.output == plain.output);
    CHECK(pelt.file("x.json") == plain.output);
}

TEST_CASE("a job that fails leaves the old file as it was") {
    const Program pelt;
    pelt.folder().write("sheet.json", "old");
    pelt.folder().write("wrong.yaml", "vehicle: [\n");
    CHECK(pelt({"cut", "wrong.yaml", "film.yaml", "-o", "sheet.json"}).status == 3);
    CHECK(pelt.file("sheet.json") == "old");
}
