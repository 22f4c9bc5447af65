// SPDX-License-Identifier: MIT
// The tables are whole, and help and manual show what they hold and nothing else.
#include "cli/help.hpp"
#include "cli/man_page.hpp"
#include "cli/options.hpp"
#include "cli/statuses.hpp"
#include "cli/values.hpp"
#include "order/order.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <regex>
#include <set>
#include <sstream>

using namespace pelt;
using namespace pelt::cli;

namespace {

/// Every `--word` in a text.
std::set<std::string> long_options_in(const std::string& text) {
    static const std::regex pattern("--[a-z][a-z-]*");
    std::set<std::string> found;
    for (auto at = std::sregex_iterator(text.begin(), text.end(), pattern);
         at != std::sregex_iterator(); ++at)
        found.insert(at->str());
    return found;
}

std::set<std::string> working_options(const Command* command) {
    std::set<std::string> names;
    for (const OptionRow& row : options())
        if (row.works && (command == nullptr || belongs_to(row, *command)))
            names.insert(spelled(row));
    return names;
}

std::string plain_mdoc(std::string text) {
    for (const auto& [from, to] : {std::pair<std::string, std::string>{"\\-", "-"}, {"Fl -", "--"}})
        for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at))
            text.replace(at, from.size(), to);
    return text;
}

std::size_t longest_line(const std::string& text) {
    std::istringstream lines(text);
    std::string line;
    std::size_t longest = 0;
    while (std::getline(lines, line))
        longest = std::max(longest, line.size());
    return longest;
}

} // namespace

TEST_CASE("no name and no letter stands for two options") {
    std::set<std::string_view> names;
    std::set<char> letters;
    std::set<Opt> ids;
    for (const OptionRow& row : options()) {
        CAPTURE(row.name);
        CHECK(names.insert(row.name).second);
        CHECK(ids.insert(row.id).second);
        CHECK((row.letter == 0 || letters.insert(row.letter).second));
    }
}

TEST_CASE("what works is described, and starts from a value that it would take") {
    for (const OptionRow& row : options()) {
        if (!row.works)
            continue;
        CAPTURE(row.name);
        CHECK_FALSE(row.line.empty());
        CHECK(row.text.size() > 1);
        CHECK(row.text.back() == '.');
        CHECK((row.kind == Kind::flag) == (row.value.empty() && row.choices.empty()));
        // Without --schema nothing is printed, without --units the film file says the unit.
        if (row.kind == Kind::choice && row.id != Opt::schema && row.id != Opt::units)
            CHECK_FALSE(complaint_about(row, std::string(row.initial)).has_value());
        if (row.kind == Kind::count && row.id != Opt::threads)
            CHECK_FALSE(complaint_about(row, std::string(row.initial)).has_value());
    }
}

TEST_CASE("the defaults that help tells are those of a request") {
    const order::Request request;
    CHECK(row_of(Opt::by).initial == name_of(request.by));
    CHECK(row_of(Opt::times).initial == std::to_string(request.times));
    CHECK(row_of(Opt::effort).initial == std::to_string(request.effort.amount));
    CHECK(row_of(Opt::seed).initial == std::to_string(request.effort.seed));
    CHECK((row_of(Opt::seams).initial == "fitter") == (request.seams == Seams::fitter));
}

TEST_CASE("help shows every option that works, no other, and fits 80 columns") {
    CHECK(longest_line(main_help()) <= 80);
    CHECK(longest_line(short_help()) <= 80);
    for (const CommandRow& row : commands()) {
        if (!row.works)
            continue;
        CAPTURE(row.name);
        const std::string help = help_of_command(row.id);
        CHECK(longest_line(help) <= 80);
        std::set<std::string> shown = long_options_in(help);
        CHECK(shown == working_options(&row.id));
        CHECK(help.compare(0, 7, "Usage: ") == 0);
        CHECK(main_help().find("  " + std::string(row.name) + " ") != std::string::npos);
    }
}

TEST_CASE("the manual shows every option that works and no other") {
    std::string all;
    for (const auto& [word, text] : manual_fillings())
        all += text;
    CHECK(long_options_in(plain_mdoc(all)) == working_options(nullptr));
}

TEST_CASE("help names every exit status") {
    for (const StatusRow& row : statuses())
        CHECK(main_help().find("  " + std::to_string(row.status) + " ") != std::string::npos);
}

TEST_CASE("the worst fault decides the status") {
    const auto fault = [](Severity severity) { return Fault{severity, {}, "", "", ""}; };
    CHECK(status_of(Faults{}) == 0);
    CHECK(status_of({fault(Severity::note), fault(Severity::warning)}) == 0);
    CHECK(status_of({fault(Severity::usage), fault(Severity::warning)}) == 2);
    CHECK(status_of({fault(Severity::access), fault(Severity::file)}) == 4);
    CHECK(status_of({fault(Severity::file), fault(Severity::usage)}) == 3);
    CHECK(status_of({fault(Severity::job)}) == 1);
}
