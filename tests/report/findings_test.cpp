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

bool any_has(const std::vector<Mark>& marks, const std::string& panel, const std::string& part) {
    return std::any_of(marks.begin(), marks.end(), [&](const Mark& mark) {
        return mark.panel == panel && has(mark.what + "; " + mark.remedy, part);
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

TEST_CASE("a seam that the file does not ask for stands on the sheet, and is no mark") {
    const Sheet sheet = whole_van();
    const std::vector<std::string> seams = added_seams(sheet, mm);
    REQUIRE_FALSE(seams.empty());
    CHECK(any_has(seams, "roof: seam added"));
    CHECK(any_has(seams, " laps over piece "));
    CHECK(any_has(seams, " mm long"));
    CHECK(has(to_table(sheet), "  - front bumper: seam added"));
}

TEST_CASE("stretch over the film's limit is a mark, and what was not checked and zones are notes") {
    const std::vector<Mark> marks = marks_of(whole_van(), mm);
    CHECK(any_has(marks, "mirror cap", "over the film's 8 % stretch; cut in at its edges"));
    CHECK_FALSE(any_has(marks, "roof", ""));
    const std::vector<std::string> notes = notes_of(whole_van(), mm);
    CHECK(any_has(notes, "Stretch not checked, since no rise was measured: front bumper, "));
    CHECK(any_has(notes, "Keep clear, cut out: roof (aerial)."));
    CHECK(any_has(notes, "never on paint"));
}

TEST_CASE("stretch: a mark above 80 % of the film's limit, and nothing for what is flat") {
    // A round dome of 200 mm that rises 20 mm stretches the film by (2/3)(2·20/200)² = 2.6 %.
    const auto said = [](double limit) {
        const std::string vehicle =
            "vehicle: Dome\npanels:\n"
            "  lamp ring: {outline: [[0, 100], {through: [100, 0], to: [200, 100]}, "
            "{through: [100, 200], to: [0, 100]}], crown: 20, direction: any, edges: none}\n"
            "  sill: {sides: both, size: [900, 90], edges: none}\n";
        const std::string film =
            test::plain_film + "stretch: {edge: 4 %, panel: " + std::to_string(limit) + " %}\n";
        return marks_of(test::sheet(vehicle, film), mm);
    };
    CHECK(any_has(said(2.5), "lamp ring", "over the film's 2.5 % stretch"));
    CHECK(any_has(said(3.2), "lamp ring", "near the film's 3.2 % stretch; warm it"));
    CHECK(said(3.4).empty());
}

TEST_CASE("a panel with girths is checked by its two rises, and not by girths alone") {
    const auto sheet_with = [](const std::string& rises) {
        return test::sheet("vehicle: Van\npanels:\n  front bumper: {girths: [{at: 0, up: 200, down: "
                           "200}, {at: 1200, up: 200, down: 200}], " +
                               rises + "forward: down, edges: none}\n",
                           test::plain_film + "stretch: 6 %\n");
    };
    const char* not_checked = "Stretch not checked, since no rise was measured: front bumper.";
    CHECK(any_has(notes_of(sheet_with(""), mm), not_checked));
    const Sheet mild = sheet_with("rise over spine: 100, rise over girth: 20, ");
    CHECK_FALSE(any_has(notes_of(mild, mm), "not checked"));
    CHECK(marks_of(mild, mm).empty());
    const Sheet sharp = sheet_with("rise over spine: 300, rise over girth: 90, ");
    CHECK(any_has(marks_of(sharp, mm), "front bumper", "over the film's 6 % stretch"));
    const Sheet flat = sheet_with("rise over spine: 300, rise over girth: 0, ");
    CHECK(marks_of(flat, mm).empty());
}

TEST_CASE("narrow margins are said where they are narrow, and only there") {
    const std::string narrow = with(test::priced_film, "want: 40 mm", "want: 20 mm");
    CHECK(any_has(notes_of(test::sheet(test::whole_van, narrow), mm),
                  "Margin to grip under 25 mm: "));
    CHECK_FALSE(any_has(notes_of(whole_van(), mm), "Margin to grip under"));
}

TEST_CASE("what is wrong with a panel that is left out is not this sheet's business") {
    order::Request request = test::request(test::whole_van, test::priced_film);
    request.selection.without = {"mirror cap"};
    Sheet sheet = test::sheet(request);
    sheet.warnings = {{Severity::warning, {}, "mirror cap", "has a flaw", ""},
                      {Severity::warning, {}, "hood", "has another", ""},
                      {Severity::warning, {}, "", "and the job", ""}};
    const std::vector<Mark> marks = marks_of(sheet, mm);
    CHECK_FALSE(any_has(marks, "mirror cap", ""));
    CHECK(any_has(marks, "hood", "has another"));
    CHECK(any_has(marks, "", "and the job"));
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
    const std::vector<std::string> van = cautions(whole_van());
    CHECK(any_has(van, "no film that holds metal over"));
    CHECK_FALSE(any_has(van, "Motorcycles"));
    for (const char* always : {"Blades", "Heat", "Solvents", "Height", "Airbags", "Lamps", "color",
                               "paint", "after about a week"})
        CHECK(any_has(van, always));
    for (const char* never : {"°C", "°F", " Nm", "degrees", "legal in"})
        CHECK_FALSE(any_has(van, never));
    const std::string bike = with(test::two_panels, "panels:", "body: motorcycle\npanels:");
    CHECK(any_has(cautions(test::sheet(bike, test::plain_film)), "Motorcycles"));
}

TEST_CASE("two people for what is over 1.3 m along the roll or across it") {
    const auto names = [](const std::string& size) {
        const std::string vehicle = "vehicle: Small van\npanels:\n  roof: {size: " + size +
                                    ", forward: right, edges: none}\n";
        return any_has(notes_of(test::sheet(vehicle, test::plain_film), mm),
                       "for two people: roof");
    };
    CHECK(names("[1301, 500]"));
    CHECK(names("[500, 1301]"));
    CHECK_FALSE(names("[1300, 1300]"));
}

TEST_CASE("a length far from its body's row is unusual, one within it is not") {
    CHECK(any_has(marks_of(whole_van(), mm), "", "far less film than is usual"));
    const std::string scooter = with(test::whole_van, "body: city car", "body: motor scooter");
    CHECK(any_has(marks_of(test::sheet(scooter, test::priced_film), mm), "",
                  "far more film than is usual"));
    const std::string usual = with(test::two_panels, "panels:", "body: motorcycle\npanels:");
    const Sheet sheet = test::sheet(usual, test::plain_film);
    CHECK_FALSE(any_has(marks_of(sheet, mm), "", "than is usual"));
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

TEST_CASE("what is usual for straight cuts is not held against a contour layout") {
    order::Request request = test::request(test::whole_van, test::priced_film);
    request.by = CutBy::contour;
    const Sheet sheet = test::sheet(request);
    CHECK_FALSE(plausibility(sheet.plan, mm));
    CHECK_FALSE(any_has(marks_of(sheet, mm), "", "far less"));
}

TEST_CASE("no row, no line: unknown bodies, and jobs of a part of the vehicle") {
    CHECK_FALSE(plausibility(test::sheet(test::two_panels, test::plain_film).plan, mm));
    order::Request request = test::request(test::whole_van, test::priced_film);
    request.selection.only = {"roof"};
    CHECK_FALSE(plausibility(test::sheet(request).plan, mm));
}
