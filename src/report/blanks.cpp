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

std::string filled_in(const Fillings& filled, const std::string& word) {
    for (const auto& [name, text] : filled)
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

Blanks blanks_of(const Sheet& sheet) {
    return {check_code_of(sheet), known_batch(sheet), sheet.date, sheet.filled};
}

Blanks blanks_of(const EstimateSheet& sheet) {
    return {check_code_of(*sheet.estimate.as_scaled), "", sheet.date, sheet.filled};
}

std::vector<std::string> lines_with_blanks(const Blanks& blanks) {
    const auto filled = [&](const std::string& word, const std::string& known = "") {
        const std::string text = filled_in(blanks.filled, word);
        return or_blank(text.empty() ? known : text);
    };
    std::vector<std::string> lines{
        "Job: " + filled("job") + " · customer: " + filled("customer") +
            " · plate: " + filled("plate"),
        "Check code: " + or_blank(blanks.check_code) + " · color: " + filled("color") +
            " · batch: " + filled("batch", blanks.batch),
        "Date: " + filled("date", blanks.date) + " · measured by: " + filled("measured by")};
    const std::vector<std::string>& names = names_of_blanks();
    for (const auto& [word, text] : blanks.filled)
        if (std::find(names.begin(), names.end(), word) == names.end())
            lines.push_back(word + ": " + text);
    return lines;
}

} // namespace pelt::report
