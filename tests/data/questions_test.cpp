// SPDX-License-Identifier: MIT
// Ten questions of a normal week (common practice, no source), each answered by one command that
// the README shows.
#include "shipped.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

namespace pelt::data_test {
namespace {

struct Question {
    std::string asked;
    std::string command;               ///< as the README has it
    std::vector<std::string> answered; ///< parts of its output
};

const std::vector<Question> questions{
    {"this hatchback in this hybrid, all parts off: how many meters?",
     "pelt cut town-hatchback satin-hybrid",
     {"ORDER", " m × 1524 mm", "Parts to take off before wrapping"}},
    {"a black roof with pillars and mirrors?",
     "pelt cut town-hatchback satin-hybrid --only top,mirrors",
     {"ORDER", "roof", "mirror cap", "pillar"}},
    {"only the left rear door was scraped: how much, which batch?",
     "pelt cut town-hatchback satin-hybrid --only \"rear door/left\" --stock examples/stock.yaml",
     {"From stock A (batch B12): ", "[  ]    1  rear door  left"}},
    {"I have 6.4 m and two remnants: enough?",
     "pelt cut town-hatchback satin-hybrid --only hood,roof --stock examples/stock.yaml",
     {"From stock ", "left over", "hood", "roof"}},
    {"will the mirror cap or the bumper go in one piece with this film?",
     "pelt area town-hatchback satin-hybrid --only \"mirror cap,front bumper\"",
     {"mirror cap", "front bumper", "stretch"}},
    {"I spoiled the left quarter and have 3.2 m left: can I finish?",
     "pelt cut town-hatchback satin-hybrid --spoiled \"left quarter\" --on-hand \"3.2 m\"",
     {"Enough: what is left takes all that is still to be cut.",
      "From stock on hand: ", "left over"}},
    {"what must be in the shop on Monday: tools, clips, tape; what comes off first?",
     "pelt strip town-hatchback satin-hybrid --shop examples/shop.yaml",
     {"PARTS TO TAKE OFF, IN THIS ORDER", "1  door cards", "Tools: ", "Clips that come off: ",
      "blade tips", "cutting tape", "masking tape", "clips", "At the shop's prices: ", " EUR"}},
    {"price and finish day; and if handles and mirrors stay on?",
     "pelt quote examples/parts-on.csv --shop examples/shop.yaml",
     {"all parts", "2026-12-", " EUR", "handles and", "2026-12-", " EUR"}},
    {"1.22 or 1.52 m, this film or that?",
     "pelt compare town-hatchback satin-hybrid satin-hybrid-narrow gloss-cast-yard",
     {"THE CHEAPEST FIRST", "WHAT MAKES THE DIFFERENCE"}},
    {"three vans or two cars in one color this week: one order?",
     "pelt cut panel-van gloss-cast-yard --times 3",
     {"3 times", "ORDER"}},
};

TEST_CASE("ten questions of a normal week, each one command that the README shows") {
    CHECK(questions.size() == 10);
    const std::string readme = text_of("README.md");
    for (const Question& question : questions) {
        CAPTURE(question.asked);
        CHECK(readme.find("    $ " + question.command + "\n") != std::string::npos);
        const support::Result result = shell(question.command);
        CHECK(result.status == 0);
        CAPTURE(result.output);
        for (const std::string& part : question.answered) {
            CAPTURE(part);
            CHECK(result.output.find(part) != std::string::npos);
        }
    }
}

TEST_CASE("price and day of each way: parts that stay on save hours and make panels slower") {
    const support::Result rows =
        shell("pelt quote examples/parts-on.csv --shop examples/shop.yaml --format csv");
    CHECK(rows.status == 0);
    // A head and three rows, each with a total and a day.
    std::size_t days = 0;
    for (std::size_t at = rows.output.find(",EUR,2026-12-"); at != std::string::npos;
         at = rows.output.find(",EUR,2026-12-", at + 1))
        ++days;
    CHECK(days == 3);
}

TEST_CASE("quotes in parts, by GNU parallel on this host, are the same bytes") {
    const support::ScratchFolder folder;
    std::string jobs;
    for (int i = 1; i <= 23; ++i)
        jobs += "---\njob: car " + std::to_string(i) +
                "\nvehicle: town-hatchback\nfilm: satin-hybrid\nonly: [hood, mirror cap]\n"
                "tolerance: " +
                std::to_string(i) + " mm\n";
    folder.write("jobs.yaml", jobs);
    folder.write("shop.yaml", text_of("examples/shop.yaml"));
    folder.write("log.csv", text_of("examples/log.csv"));
    const std::string files = folder.path() + "/jobs.yaml " + folder.path() + "/shop.yaml";
    const support::Result parts = shell("IN_A_PART=5 HOME=" + folder.path() +
                                        " examples/quotes-over-machines " + files + " --jobs 2");
    const support::Result whole = shell("pelt quote " + folder.path() + "/jobs.yaml --shop " +
                                        folder.path() + "/shop.yaml --format json --threads 2");
    INFO(parts.errors);
    CHECK(parts.status == 0);
    CHECK(whole.status == 0);
    CHECK(parts.output == whole.output);
    CHECK(whole.output.find("\"job\": \"car 23\"") != std::string::npos);
}

} // namespace
} // namespace pelt::data_test
