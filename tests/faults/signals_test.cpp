// SPDX-License-Identifier: MIT
// Signals at many moments of a run: a whole sheet or the old one, and nothing beside it. No time is
// measured: whenever a signal comes, the same must hold.
#include "cli/program.hpp"

#include <doctest/doctest.h>

#include <csignal>
#include <filesystem>
#include <string>

using namespace pelt;
using cli_test::Program;
namespace fs = std::filesystem;

TEST_CASE("signals at forty moments leave a whole sheet or the old one, and no temporary") {
    const Program pelt;
    REQUIRE(pelt({"cut", "van.yaml", "film.yaml", "-q", "-o", "whole.svg"}).status == 0);
    const std::string whole = pelt.file("whole.svg");
    for (int moment = 0; moment < 40; ++moment) {
        const std::string signal = moment % 3 == 0 ? "INT" : moment % 3 == 1 ? "TERM" : "HUP";
        const std::string after =
            "0." + std::string(moment < 10 ? "0" : "") + std::to_string(moment);
        CAPTURE(signal);
        CAPTURE(after);
        pelt.folder().write("sheet.svg", "old");
        // 124: the signal was sent; else the run was quicker.
        const support::Result result =
            pelt.shell("timeout -s " + signal + " " + after +
                       " pelt cut van.yaml film.yaml -q --times 20 --effort 4 -o sheet.svg");
        const std::string left = pelt.file("sheet.svg");
        const bool is_whole = left.ends_with("</svg>\n");
        CHECK((left == "old" || is_whole));
        if (result.status == 0)
            CHECK(is_whole);
        for (const fs::directory_entry& entry : fs::directory_iterator(pelt.folder().path()))
            CHECK_FALSE(entry.path().filename().string().starts_with(".pelt-"));
    }
    CHECK(pelt.file("whole.svg") == whole);
}

TEST_CASE("standard streams that are closed, in every combination") {
    const Program pelt;
    const std::string none[] = {"<&-", ">&-", "2>&-"};
    for (int which = 0; which < 8; ++which) {
        std::string closed;
        for (int stream = 0; stream < 3; ++stream)
            closed += (which >> stream & 1) != 0 ? " " + none[stream] : std::string();
        CAPTURE(closed);
        pelt.folder().write("sheet.csv", "old");
        const support::Result printed =
            pelt.shell("pelt cut van.yaml film.yaml -q --format csv" + closed);
        CHECK(printed.status == ((which & 2) != 0 ? 4 : 0));
        const support::Result written =
            pelt.shell("pelt cut van.yaml film.yaml -q -o sheet.csv" + closed);
        CHECK(written.status == 0);
        CHECK(pelt.file("sheet.csv").starts_with("number,"));
        // No message ever lands in a file that was opened in the place of a closed stream.
        CHECK(pelt.file("van.yaml") == cli_test::small_van);
        CHECK(pelt.file("sheet.csv").find("pelt:") == std::string::npos);
    }
}

TEST_CASE("a full disk is told, with the old file kept, and a folder that is closed too") {
    const Program pelt;
    for (const std::string format : {"table", "csv", "json", "markdown", "svg"}) {
        CAPTURE(format);
        const support::Result full =
            pelt.shell("pelt cut van.yaml film.yaml -q --format " + format + " > /dev/full");
        CHECK(full.status == 4);
        CHECK(full.errors.find("No space left on device") != std::string::npos);
    }
    CHECK(pelt.shell("pelt cut van.yaml film.yaml -q -o /dev/full --format csv").status == 4);
}

TEST_CASE("a terminal of twenty columns, no HOME, no variables at all, commas for points") {
    Program pelt;
    pelt.environment = {{"COLUMNS", "20"}, {"TERM", "xterm"}};
    const support::Result narrow = pelt.in_terminal({"cut", "van.yaml", "film.yaml"});
    CHECK(narrow.status == 0);
    CHECK_FALSE(narrow.output.empty());
    pelt.environment = {};
    for (const std::vector<std::string>& words : std::vector<std::vector<std::string>>{
             {"cut", "van.yaml", "film.yaml", "-q"}, {"list"}, {"check", "van.yaml"}, {"--help"}})
        CHECK(pelt(words).status == 0);
    const std::string plain = pelt({"cut", "van.yaml", "film.yaml", "--format", "json"}).output;
    pelt.environment = {{"LC_ALL", "de_DE.UTF-8"}, {"HOME", ""}, {"XDG_DATA_HOME", "relative"}};
    CHECK(pelt({"cut", "van.yaml", "film.yaml", "--format", "json"}).output == plain);
}
