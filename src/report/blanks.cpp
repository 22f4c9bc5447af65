// SPDX-License-Identifier: MIT
#include "report/blanks.hpp"

#include "report/facts.hpp"

#include <algorithm>

namespace pelt::report {
namespace {

constexpr const char* blank = "____________";

std::string or_blank(const std::string& text) {
    return text.empty() ? blank : text;
}

std::string filled_in(const Sheet& sheet, const std::string& word) {
    for (const auto& [name, text] : sheet.filled)
        if (name == word)
            return text;
    return "";
}

/// Of all film that is used, where it is one and known.
std::string known_batch(const Sheet& sheet) {
    std::string batch;
    for (const UsedRoll& used : sheet.plan.layout().rolls) {
        const std::string own = known_batch_of(sheet.plan.job().rolls.at(used.roll));
        if (own.empty() || (!batch.empty() && batch != own))
            return "";
        batch = own;
    }
    return batch;
}

} // namespace

const std::vector<std::string>& names_of_blanks() {
    static const std::vector<std::string> names{"job",   "customer", "plate",      "color",
                                                "batch", "date",     "measured by"};
    return names;
}

std::vector<std::string> lines_with_blanks(const Sheet& sheet) {
    const auto field = [&](const std::string& word) {
        return " · " + word + ": " + or_blank(filled_in(sheet, word));
    };
    const std::string batch = filled_in(sheet, "batch");
    const std::string date = filled_in(sheet, "date");
    std::vector<std::string> lines{
        "Job: " + or_blank(filled_in(sheet, "job")) + field("customer") + field("plate"),
        "Check code: " + or_blank(check_code_of(sheet)) + field("color") +
            " · batch: " + or_blank(batch.empty() ? known_batch(sheet) : batch),
        "Date: " + or_blank(date.empty() ? sheet.date : date) + field("measured by")};
    const std::vector<std::string>& names = names_of_blanks();
    for (const auto& [word, text] : sheet.filled)
        if (std::find(names.begin(), names.end(), word) == names.end())
            lines.push_back(word + ": " + text);
    return lines;
}

} // namespace pelt::report
