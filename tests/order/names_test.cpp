// SPDX-License-Identifier: MIT
// Panels are told apart by what they are, not by how they are called.
#include "job.hpp"
#include "order/redo.hpp"
#include "trade/names.hpp"

#include <doctest/doctest.h>

#include <sstream>
#include <string>
#include <vector>

using namespace pelt;
using namespace pelt::order_test;

namespace {

std::vector<std::string> words_of(const trade::PanelName& row) {
    std::vector<std::string> words{std::string(row.word)};
    std::string_view rest = row.others;
    while (!rest.empty()) {
        const std::size_t end = std::min(rest.find(" | "), rest.size());
        words.emplace_back(rest.substr(0, end));
        rest.remove_prefix(std::min(rest.size(), end + 3));
    }
    return words;
}

/// One vehicle under two sets of names.
struct TwoFiles {
    std::string first;
    std::string second;
};

std::string keys_of_a_panel(Chance& chance) {
    static const std::vector<std::string> sides{"left", "right", "both", "centre"};
    std::ostringstream keys;
    keys << "size: [" << chance.between(80, 1400) << ", " << chance.between(60, 900)
         << "], edges: none, sides: " << sides[chance.below(4)];
    // A panel on the top needs its arrow told, any other may do without.
    keys << (chance.below(2) == 0 ? ", forward: up" : ", direction: any");
    return keys.str();
}

/// By another word of the same row, or by `is` under a name that tells nothing.
std::string renamed(const trade::PanelName& row, std::size_t number, const std::string& keys,
                    Chance& chance) {
    const std::vector<std::string> words = words_of(row);
    const std::string is = words[chance.below(words.size())];
    // A number tells panels of one kind apart; it is set aside like "left".
    if (chance.below(3) > 0)
        return "  " + is + " " + std::to_string(number) + ": {" + keys + "}\n";
    return "  thing " + std::to_string(number) + ": {is: " + is + ", " + keys + "}\n";
}

TwoFiles random_vehicle(std::size_t seed) {
    Chance chance(seed);
    TwoFiles files;
    const std::size_t panels = chance.between(2, 12);
    for (std::size_t i = 0; i < panels; ++i) {
        const auto names = trade::panel_names();
        const trade::PanelName& row = names[chance.below(names.size())];
        const std::string keys = keys_of_a_panel(chance);
        files.first +=
            "  " + std::string(row.word) + " " + std::to_string(i + 1) + ": {" + keys + "}\n";
        files.second += renamed(row, i + 1, keys, chance);
    }
    return files;
}

/// All that is decided about a job: every piece's place and cut, the order of laying, the chances
/// of a redo and what is bought.
std::string decisions(const std::string& panels, const std::string& film_text) {
    order::Request request;
    request.vehicles = {vehicle(panels)};
    request.film = film(film_text);
    request.sure_percent = 95;
    const order::Outcome outcome = order::run(std::move(request));
    std::ostringstream text;
    text.precision(17);
    if (!outcome.plan)
        return "no plan";
    const Job& job = outcome.plan->job();
    for (const UsedRoll& roll : outcome.plan->layout().rolls) {
        text << "roll " << roll.length << "\n";
        for (const Placement& p : roll.placements)
            text << p.piece << " " << p.copy << " " << p.shape << " " << p.at.x << " " << p.at.y
                 << " laid " << job.laying[p.piece][p.copy] << "\n";
        for (const Cut& cut : roll.cuts)
            text << cut.from.x << " " << cut.from.y << " " << cut.to.x << " " << cut.to.y << "\n";
    }
    for (const RedoChance& chance : order::redo_chances(job))
        text << "panel " << chance.panel << " " << chance.percent << "\n";
    text << "order " << outcome.order.length().mm() << "\n";
    return text.str();
}

constexpr const char* one_way = "kind: hybrid\nroll: {width: 1524 mm, length: 25 m}\n"
                                "direction: one-way\nstretch: {edge: 4 %, panel: 12 %}\n"
                                "sold: [{by: 1 m, price: 10.00}]\n";

} // namespace

TEST_CASE("renaming panels within what the table calls the same changes no decision") {
    const int jobs = test::asked_jobs("PELT_RANDOM_JOBS", 60);
    int planned = 0;
    for (int seed = 1; seed <= jobs; ++seed) {
        const TwoFiles files = random_vehicle(static_cast<std::size_t>(seed));
        CAPTURE(files.first);
        CAPTURE(files.second);
        const std::string first = decisions(files.first, one_way);
        planned += first == "no plan" ? 0 : 1;
        CHECK(first == decisions(files.second, one_way));
    }
    CHECK(planned * 2 > jobs);
}

TEST_CASE(
    "a name that the table does not know is reckoned as a plain panel, whatever its letters") {
    const std::string keys = ": {size: [700, 500], forward: up, edges: none}\n";
    const std::string plain = decisions("  plain panel" + keys, one_way);
    REQUIRE(plain != "no plan");
    for (const char* name : {"glider", "mirrored clock", "wing", "tailgate", "hood scoop"})
        CHECK(decisions("  " + std::string(name) + keys, one_way) == plain);
}
