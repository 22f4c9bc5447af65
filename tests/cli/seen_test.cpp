// SPDX-License-Identifier: MIT
// Messages do not repeat what the sheet on the same terminal says.
#include "program.hpp"

#include <doctest/doctest.h>

namespace pelt::cli_test {
namespace {

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

/// The small job with a panel that has no tuck, which is a mark.
void write_without_a_tuck(const Program& program) {
    program.folder().write("bare.yaml",
                           "vehicle: Van\npanels:\n  hood: {size: [1200, 800], forward: up}\n");
    program.folder().write("film.yaml", "film: Small film\nroll: {width: 1524 mm, trim: 6 mm}\n"
                                        "direction: two-way\n");
}

const char* const mark = "no tuck given, so film ends at its edges";

} // namespace

TEST_CASE("a mark on the sheet is not told again on the same terminal") {
    const Program pelt;
    write_without_a_tuck(pelt);
    for (const char* command : {"cut", "area"}) {
        CAPTURE(command);
        const auto seen = pelt.in_terminal({command, "bare.yaml", "film.yaml"});
        CHECK(seen.status == 0);
        CHECK(has(seen.output, "no tuck given"));
        CHECK_FALSE(has(seen.errors, "no tuck given"));
    }
}

TEST_CASE("an estimate on the same terminal has its marks alone") {
    const Program pelt;
    pelt.folder().write("sized.yaml",
                        "vehicle: Van\noverall: {length: 4640, width: 1800, height: 1450}\n"
                        "panels:\n  hood: {size: [1200, 800], forward: up, edges: none}\n");
    const std::string stock = "an estimate does not look at stock";
    const std::vector<std::string> words{
        "cut", "sized.yaml", "film.yaml", "--like-size", "4710,1830,1480", "--on-hand", "5m"};
    const auto seen = pelt.in_terminal(words);
    CHECK(seen.status == 0);
    CHECK(has(seen.output, stock));
    CHECK_FALSE(has(seen.errors, stock));
    CHECK(has(pelt(words).errors, stock));
}

TEST_CASE("a remark that only a cut sheet has is told beside a list of areas") {
    const Program pelt;
    pelt.folder().write("tucked.yaml", "film: Small film\nroll: {width: 1524 mm, trim: 6 mm}\n"
                                       "direction: two-way\nallowances: {tuck: 12 mm}\n");
    pelt.folder().write("bare.yaml",
                        "vehicle: Van\npanels:\n  hood: {size: [1200, 800], forward: up}\n");
    const std::string remark = "uck of 12 mm by the film file";
    const auto cut = pelt.in_terminal({"cut", "bare.yaml", "tucked.yaml", "-v"});
    const auto area = pelt.in_terminal({"area", "bare.yaml", "tucked.yaml", "-v"});
    CHECK(has(cut.output, remark));
    CHECK_FALSE(has(cut.errors, remark));
    CHECK_FALSE(has(area.output, remark));
    CHECK(has(area.errors, remark));
}

TEST_CASE("where the sheet goes elsewhere or has other words, marks are told") {
    const Program pelt;
    write_without_a_tuck(pelt);
    CHECK(has(pelt({"cut", "bare.yaml", "film.yaml"}).errors, mark));
    CHECK(has(pelt.in_terminal({"cut", "bare.yaml", "film.yaml", "--format", "json"}).errors, mark));
    CHECK(has(pelt.in_terminal({"cut", "bare.yaml", "film.yaml", "-o", "sheet.md"}).errors, mark));
}

} // namespace pelt::cli_test
