// SPDX-License-Identifier: MIT
// What is ordered: its sums, and that it is as long as the layout asks.
#include "trial.hpp"

#include <algorithm>

namespace pelt::generated {
namespace {

using nlohmann::json;

/// Millionths of a decimal number as text: money is never a floating point number.
std::int64_t millionths(const std::string& text) {
    const std::size_t point = std::min(text.find('.'), text.size());
    std::string after = point < text.size() ? text.substr(point + 1) : "";
    after.resize(6, '0');
    return std::stoll(text.substr(0, point)) * 1'000'000 + std::stoll(after);
}

} // namespace

void check_order(const json& sheet, Complaints& out) {
    const json& order = sheet["order"];
    std::int64_t length = 0;
    std::int64_t total = 0;
    bool priced = !order["lines"].empty();
    std::vector<std::int64_t> lengths;
    for (const json& line : order["lines"]) {
        const int count = line["count"];
        lengths.push_back(um(line["length_mm"]));
        length += lengths.back();
        if (std::abs(count * line["by_mm"].get<double>() - line["length_mm"].get<double>()) > 1e-3)
            out.emplace_back("an order line is not so many of its unit");
        if (line["price"].is_null())
            priced = false;
        else
            total += count * millionths(line["price"]);
    }
    if (std::abs(um(order["length_mm"]) - length) > static_cast<std::int64_t>(lengths.size()) + 1)
        out.emplace_back("the order is not as long as its lines");
    if (priced && !order["total"].is_null() && millionths(order["total"]) != total)
        out.emplace_back("the order's total is not its lines' sum");
    if (!order["next_best"].is_null() && !order["total"].is_null() &&
        !order["next_best"]["total"].is_null() &&
        millionths(order["next_best"]["total"]) < millionths(order["total"]))
        out.emplace_back("the next best order is cheaper");
    std::vector<std::int64_t> needed;
    for (const json& roll : sheet["rolls"])
        if (roll["is_new"].get<bool>())
            needed.push_back(um(roll["length_mm"]));
    if (needed.empty() && !lengths.empty() && order["spare"].is_null())
        out.emplace_back("film is bought that is not needed");
    if (lengths.empty())
        return;
    std::sort(needed.rbegin(), needed.rend());
    std::sort(lengths.rbegin(), lengths.rend());
    for (std::size_t i = 0; i < needed.size(); ++i)
        if (i >= lengths.size() || needed[i] > lengths[i] + 1)
            out.emplace_back("a length that is ordered is too short for what is cut from it");
}

} // namespace pelt::generated
