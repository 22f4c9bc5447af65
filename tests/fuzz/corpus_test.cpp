// SPDX-License-Identifier: MIT
// The corpora of the fuzzers in an ordinary build: every file of every target, and every prefix of
// the short ones, as when a file was cut off.
#include "fuzzed.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>
#include <string>

namespace pelt::fuzzed {
namespace {

namespace fs = std::filesystem;

std::string bytes_of(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream out;
    out << file.rdbuf();
    return out.str();
}

std::set<fs::path> files_in(const fs::path& folder) {
    std::set<fs::path> out;
    for (const fs::directory_entry& entry : fs::directory_iterator(folder))
        out.insert(entry.path());
    return out;
}

/// So many prefixes of it as well, evenly apart.
constexpr std::size_t prefixes = 16;

void run_with_prefixes(std::string_view target, const std::string& bytes) {
    CHECK_NOTHROW(run(target, bytes));
    if (target == "whole") // each is a plan, and half of a file is none
        return;
    for (std::size_t i = 0; i < prefixes; ++i) {
        CAPTURE(i);
        CHECK_NOTHROW(run(target, std::string_view(bytes).substr(0, bytes.size() * i / prefixes)));
    }
}

} // namespace

TEST_CASE("every file of every corpus keeps what is promised") {
    for (const Target& target : targets()) {
        CAPTURE(target.name);
        const std::set<fs::path> files = files_in(fs::path(PELT_CORPUS) / target.name);
        CHECK(files.size() >= 5);
        for (const fs::path& file : files) {
            CAPTURE(file.string());
            run_with_prefixes(target.name, bytes_of(file));
        }
    }
}

TEST_CASE("every corpus belongs to a target") {
    std::set<std::string> known;
    for (const Target& target : targets())
        known.insert(std::string(target.name));
    std::set<std::string> found;
    for (const fs::path& folder : files_in(PELT_CORPUS))
        found.insert(folder.filename().string());
    CHECK(found == known);
    CHECK_THROWS_AS(run("no such target", ""), std::out_of_range);
}

TEST_CASE("a promise that is broken is noticed") {
    CHECK_THROWS_AS(expect(false, "it holds"), Broken);
    CHECK_THROWS_AS(expect_printable("\x1b[2J"), Broken);
    CHECK_THROWS_AS(expect_printable("\xc3("), Broken);
    CHECK_NOTHROW(expect_printable("two lines\nof 1 m²"));
    CHECK_THROWS_AS(expect_sentences({{Severity::file, {}, "", "it is wrong", ""}}), Broken);
    CHECK_NOTHROW(expect_sentences({{Severity::file, {}, "", "it is wrong", "mend it"}}));
}

TEST_CASE("the dictionary has a word a line, between quotes") {
    std::istringstream lines(bytes_of(PELT_DICTIONARY));
    std::size_t words = 0;
    for (std::string line; std::getline(lines, line); ++words) {
        CAPTURE(line);
        CHECK((line.size() > 2 && line.front() == '"' && line.back() == '"'));
    }
    CHECK(words > 300);
}

} // namespace pelt::fuzzed
