// SPDX-License-Identifier: MIT
#include "job.hpp"
#include "report/assumptions.hpp"
#include "report/cautions.hpp"
#include "report/findings.hpp"
#include "report/plausibility.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

using namespace pelt;
using namespace pelt::report;

namespace {

const Measures mm{Unit::mm};

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

bool any_has(const std::vector<std::string>& texts, const std::string& part) {
    return std::any_of(texts.begin(), texts.end(),
                       [&](const std::string& text) { return has(text, part); });
}

bool any_has(const std::vector<Finding>& findings, const std::string& panel,
             const std::string& part) {
    return std::any_of(findings.begin(), findings.end(), [&](const Finding& finding) {
        return finding.panel == panel && has(finding.text, part);
    });
}

Sheet whole_van() {
    return test::sheet(test::whole_van, test::priced_film);
}

std::string with(std::string text, const std::string& old, const std::string& now) {
    text.replace(text.find(old), old.size(), now);
    return text;
}

} // namespace

TEST_CASE("a seam that the file does not ask for is the first line of the sheet") {
    const Sheet sheet = whole_van();
    const std::vector<Finding> seams = added_seams(sheet, mm);
    REQUIRE_FALSE(seams.empty());
    CHECK(any_has(seams, "roof", "lies on top"));
    CHECK(any_has(seams, "front bumper", " mm long"));
    CHECK(to_table(sheet).rfind("  ! ", 0) == 0);
    CHECK(has(to_table(sheet), "seam added"));
}

TEST_CASE("stretch over the film's limit, what was not checked, zones to keep clear") {
    const std::vector<Finding> findings = other_findings(whole_van(), mm);
    CHECK(any_has(findings, "mirror cap", "(film: 8 %)"));
    CHECK(any_has(findings, "mirror cap", "stretch asked: about "));
    CHECK(any_has(findings, "", "stretch not checked on front bumper"));
    CHECK(any_has(findings, "roof", "keep clear (aerial)"));
    CHECK_FALSE(any_has(findings, "roof", "stretch asked"));
}

TEST_CASE("narrow margins are said where they are narrow, and only there") {
    const std::string narrow = with(test::priced_film, "want: 40 mm", "want: 20 mm");
    CHECK(any_has(other_findings(test::sheet(test::whole_van, narrow), mm), "",
                  "margin to grip under 25 mm: "));
    CHECK_FALSE(any_has(other_findings(whole_van(), mm), "", "margin to grip under"));
}

TEST_CASE("what is wrong with a panel that is left out is not this sheet's business") {
    order::Request request = test::request(test::whole_van, test::priced_film);
    request.selection.without = {"mirror cap"};
    Sheet sheet = test::sheet(request);
    sheet.warnings = {{Severity::warning, {}, "mirror cap", "has a flaw", ""},
                      {Severity::warning, {}, "hood", "has another", ""},
                      {Severity::warning, {}, "", "and the job", ""}};
    const std::vector<Finding> findings = other_findings(sheet, mm);
    CHECK_FALSE(any_has(findings, "mirror cap", ""));
    CHECK(any_has(findings, "hood", "has another"));
    CHECK(any_has(findings, "", "and the job"));
}

TEST_CASE("assumptions: parts off or on, panels and extras left out, in one unit") {
    order::Request request = test::request(test::whole_van, test::priced_film);
    request.selection.without = {"hood", "front door/left"};
    const std::vector<std::string> off = assumptions(test::sheet(request), mm);
    CHECK(any_has(off, "Parts to take off before wrapping: door handles."));
    CHECK(any_has(off, "hood"));
    CHECK(any_has(off, "front door, left"));
    CHECK(any_has(off, "Extras not included: jambs."));
    CHECK(any_has(off, "40 mm"));
    request.leave = {"door handles"};
    const std::vector<std::string> on = assumptions(test::sheet(request), mm);
    CHECK(any_has(on, "Parts left on: door handles."));
    CHECK_FALSE(any_has(on, "wrapping: door handles"));
    CHECK(any_has(assumptions(whole_van(), Measures(Unit::in)), "another ruler"));
    CHECK_FALSE(any_has(assumptions(whole_van(), mm), "another ruler"));
}

TEST_CASE("cautions: what the job calls for, and never what is the makers' to say") {
    const std::vector<std::string> van = cautions(whole_van(), mm);
    CHECK(any_has(van, "no film that holds metal over"));
    CHECK(any_has(van, "for two people: "));
    CHECK_FALSE(any_has(van, "Motorcycles"));
    for (const char* always : {"Blades", "Heat", "Solvents", "Height", "Airbags", "Lamps", "colour",
                               "paint", "after about a week"})
        CHECK(any_has(van, always));
    for (const char* never : {"°C", "°F", " Nm", "degrees", "legal in"})
        CHECK_FALSE(any_has(van, never));
    const std::string bike = with(test::two_panels, "panels:", "body: motorcycle\npanels:");
    CHECK(any_has(cautions(test::sheet(bike, test::plain_film), mm), "Motorcycles"));
}

TEST_CASE("two people for what is over 1.3 m along the roll or across it") {
    const auto names = [](const std::string& size) {
        const std::string vehicle = "vehicle: Small van\npanels:\n  roof: {size: " + size +
                                    ", forward: right, edges: none}\n";
        return any_has(cautions_of_this_job(test::sheet(vehicle, test::plain_film), mm),
                       "for two people: roof");
    };
    CHECK(names("[1301, 500]"));
    CHECK(names("[500, 1301]"));
    CHECK_FALSE(names("[1300, 1300]"));
}

TEST_CASE("a length far from its body's row is unusual, one within it is not") {
    CHECK(is_unusual(whole_van().plan));
    CHECK(has(plausibility(whole_van().plan, mm).value_or(""), "far less"));
    const std::string scooter = with(test::whole_van, "body: city car", "body: motor scooter");
    CHECK(has(plausibility(test::sheet(scooter, test::priced_film).plan, mm).value_or(""),
              "far more"));
    const std::string usual = with(test::two_panels, "panels:", "body: motorcycle\npanels:");
    const Sheet sheet = test::sheet(usual, test::plain_film);
    CHECK_FALSE(is_unusual(sheet.plan));
    CHECK(plausibility(sheet.plan, mm).has_value());
}

TEST_CASE("film that lies one way takes 5 to 10 % more than what is usual") {
    // A motor scooter's 1 to 2.5 m (common practice, no source) on film 1.52 m wide.
    const auto usual = [](const std::string& direction) {
        const std::string vehicle = "vehicle: Scooter\nbody: motor scooter\npanels:\n"
                                    "  shield: {size: [1000, 900], forward: up, edges: none}\n";
        const std::string film = with(with(test::plain_film, "1524", "1520"), "one-way", direction);
        return plausibility(test::sheet(vehicle, film).plan, mm).value_or("");
    };
    CHECK(has(usual("one-way"), ": 1.1 m to 2.8 m "));
    CHECK(has(usual("two-way"), ": 1 m to 2.5 m "));
    CHECK(has(usual("any"), ": 1 m to 2.5 m "));
}

TEST_CASE("no row, no line: unknown bodies, and jobs of a part of the vehicle") {
    CHECK_FALSE(plausibility(test::sheet(test::two_panels, test::plain_film).plan, mm));
    order::Request request = test::request(test::whole_van, test::priced_film);
    request.selection.only = {"roof"};
    CHECK_FALSE(plausibility(test::sheet(request).plan, mm));
}
