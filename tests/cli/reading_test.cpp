// SPDX-License-Identifier: MIT
// Files and streams as operands: what can be read, and what is said when it cannot.
#include "program.hpp"

#include <doctest/doctest.h>

#include <csignal>

using namespace pelt;
using cli_test::Program;
using Words = std::vector<std::string>;

namespace {

const Words job{"cut", "van.yaml", "film.yaml", "--format", "json"};

Words job_and(const Words& more) {
    Words words = job;
    words.insert(words.end(), more.begin(), more.end());
    return words;
}

} // namespace

TEST_CASE("a folder in place of a file is status 4") {
    const Program pelt;
    pelt.folder().write("folder/file", "");
    const auto result = pelt({"check", "folder"});
    CHECK(result.status == 4);
    CHECK(result.errors.find("folder") != std::string::npos);
}

TEST_CASE("an empty file is status 3") {
    const Program pelt;
    pelt.folder().write("empty.yaml", "");
    CHECK(pelt({"check", "empty.yaml"}).status == 3);
}

TEST_CASE("- is standard input, -- ends the options, -o - is standard output") {
    Program pelt;
    const auto plain = pelt(job);
    pelt.input = cli_test::small_van;
    CHECK(pelt({"cut", "-", "film.yaml", "--format", "json"}).output == plain.output);
    pelt.folder().write("-odd.yaml", cli_test::small_van);
    CHECK(pelt({"cut", "--format", "json", "--", "-odd.yaml", "film.yaml"}).output == plain.output);
    CHECK(pelt(job_and({"-o", "-"})).output == plain.output);
}

TEST_CASE("standard input that is a terminal is announced") {
    // script(1) gives the program a terminal to read from; what it reads ends at once.
    const auto result =
        Program().shell("script -qec 'pelt check -' /dev/null </dev/null | tr -d '\\r'");
    CHECK(result.output.find("pelt: reading from the terminal") != std::string::npos);
}

TEST_CASE("SIGINT outside a search ends the program by that signal") {
    // The program waits for a pipe that nobody writes to. timeout(1) sends the signal and passes
    // on how the program ended.
    const auto result = Program().shell("sleep 1 | timeout --preserve-status --signal=INT 0.3 "
                                        "pelt check -");
    CHECK(result.status == 128 + SIGINT);
    CHECK(result.output == "");
}
