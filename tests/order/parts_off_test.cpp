// SPDX-License-Identifier: MIT
// Which parts come off for some panels of a vehicle, and how many of each.
#include "job.hpp"

#include <doctest/doctest.h>

#include <map>
#include <string>

namespace pelt::order_test {
namespace {

const std::string car =
    "vehicle: Car\n"
    "panels:\n"
    "  front door:\n"
    "    sides: both\n"
    "    size: [1000, 700]\n"
    "    edges: none\n"
    "    openings:\n"
    "      handle: {corners: [[800, 500], [920, 540]], behind: handles}\n"
    "      mirror foot: {corners: [[50, 600], [100, 650]], behind: mirrors}\n"
    "  rear door:\n"
    "    sides: both\n"
    "    size: [900, 700]\n"
    "    edges: none\n"
    "    openings: {handle: {corners: [[700, 500], [820, 540]], behind: handles}}\n"
    "  mirror cap: {sides: both, size: [200, 150], edges: none, group: mirrors}\n"
    "  hatch: {size: [1000, 600], edges: none}\n"
    "  jamb: {is: door jamb, sides: both, size: [900, 100], edges: none, extra: jambs}\n"
    "hardware:\n"
    "  handles: {count: 4, after: cards}\n"
    "  cards: {count: 4, with: [front door, rear door]}\n"
    "  mirrors: {count: 2, after: cards}\n"
    "  hatch lining: {with: hatch}\n"
    "  aerial: {count: 1}\n";

std::map<std::string, int> off(order::Selection selection, const std::string& text = car) {
    order::StripRequest request;
    request.vehicle = value_of(read::vehicle(source(text)));
    request.selection = std::move(selection);
    const order::StripOutcome outcome = order::strip(request);
    CHECK_FALSE(stops(outcome.faults));
    std::map<std::string, int> counts;
    for (const PartOff& part : outcome.list.off)
        counts[part.part.name] = part.part.count;
    return counts;
}

order::Selection only(std::vector<std::string> panels) {
    return {std::move(panels), {}, {}};
}

using Counts = std::map<std::string, int>;

TEST_CASE("one door has one handle and one card") {
    CHECK(off(only({"rear door/left"})) == Counts{{"cards", 1}, {"handles", 1}});
    CHECK(off(only({"rear door"})) == Counts{{"cards", 2}, {"handles", 2}});
    CHECK(off(only({"front door/left"})) ==
          Counts{{"cards", 1}, {"handles", 1}, {"mirrors", 1}});
    CHECK(off(only({"front door", "rear door"})) ==
          Counts{{"cards", 4}, {"handles", 4}, {"mirrors", 2}});
}

TEST_CASE("a part shared by panels of one side comes off once") {
    CHECK(off(only({"mirror cap/left"})) == Counts{{"cards", 2}, {"mirrors", 1}});
    CHECK(off(only({"mirror cap", "front door"})) ==
          Counts{{"cards", 2}, {"handles", 2}, {"mirrors", 2}});
}

TEST_CASE("what is tied to no panel belongs to the vehicle as a whole") {
    const Counts all{{"aerial", 1}, {"cards", 4}, {"handles", 4}, {"hatch lining", 1}, {"mirrors", 2}};
    CHECK(off({{}, {}, {}}) == all);
    CHECK(off({{}, {}, {"jambs"}}) == all);
    CHECK(off(only({"hatch"})) == Counts{{"hatch lining", 1}});
    Counts without = all;
    without.erase("aerial");
    without.erase("hatch lining");
    CHECK(off({{}, {"hatch"}, {}}) == without);
}

TEST_CASE("counts that do not divide among their panels come off whole") {
    std::string odd = car;
    odd.replace(odd.find("count: 4, with"), 8, "count: 3");
    CHECK(off(only({"rear door/left"}), odd).at("cards") == 3);
    CHECK(off(only({"hatch"}), odd).count("cards") == 0);
}

TEST_CASE("what is used up hangs on the panels at hand") {
    order::StripRequest request;
    request.vehicle = value_of(read::vehicle(source(car)));
    const auto needed = [&](const char* what) {
        for (const ConsumableNeed& need : order::strip(request).list.used_up)
            if (need.name == what)
                return need.high;
        return std::int64_t{0};
    };
    // Four blade tips a panel at most, of seven panels and of one.
    CHECK(needed("blade tips") == 28'000);
    request.selection.only = {"rear door/left"};
    CHECK(needed("blade tips") == 4'000);
    CHECK(needed("clips") == 0);
}

} // namespace
} // namespace pelt::order_test
