// SPDX-License-Identifier: MIT
#include "report/offcuts.hpp"

#include "report/cut_steps.hpp"
#include "report/decimal.hpp"
#include "report/facts.hpp"

#include <algorithm>
#include <string_view>
#include <utility>

namespace pelt::report {
namespace {

std::string name_on_shelf(const Roll& roll) {
    constexpr std::string_view stock = "stock ";
    if (roll.name.compare(0, stock.size(), stock) == 0)
        return roll.name.substr(stock.size());
    return "rest of " + roll.name;
}

/// The flaws within a part of a roll, counted from its corner.
std::vector<Flaw> flaws_within(const Roll& roll, const Box& part) {
    std::vector<Flaw> out;
    for (const Flaw& flaw : roll.flaws) {
        const Box spoilt = box_of(flaw, roll.width);
        const Um low = std::max(spoilt.low.y, part.low.y);
        const Um high = std::min(spoilt.high.y, part.high.y);
        const Um from = std::max(spoilt.low.x, part.low.x);
        const Um to = std::min(spoilt.high.x, part.high.x);
        if (from >= to || low >= high)
            continue;
        Flaw own{from - part.low.x, to - part.low.x, {}, {}};
        if (low > part.low.y || high < part.high.y) {
            own.low = low - part.low.y;
            own.high = high - part.low.y;
        }
        out.push_back(own);
    }
    return out;
}

class Keeping {
public:
    explicit Keeping(const Sheet& sheet) : sheet_(sheet), job_(sheet.plan.job()) {}

    std::vector<Offcut> all() {
        const std::vector<PlacedPiece> pieces = pieces_by_number(sheet_.plan);
        for (std::size_t i = 0; i < sheet_.plan.layout().rolls.size(); ++i) {
            const UsedRoll& used = sheet_.plan.layout().rolls[i];
            const Roll& roll = job_.rolls.at(used.roll);
            if (const auto available = available_of(sheet_, i))
                if (keep(roll, {{used.length, 0}, {available->floor_um(), roll.width}}, roll.trim,
                         name_on_shelf(roll)) &&
                    !roll.is_new)
                    kept_.back().cost = sheet_.order.stock_costs.at(used.roll);
            if (job_.by != CutBy::straight)
                continue;
            int count = 0;
            for (const CutStep& step : cut_steps(sheet_.plan, pieces, i))
                for (const FilmAway& film : step.falls_away)
                    if (keep(roll, film.usable, 0,
                             name_on_shelf(roll) + " offcut " + std::to_string(count + 1)))
                        ++count;
        }
        return std::move(kept_);
    }

private:
    bool keep(const Roll& roll, const Box& part, Um trim, std::string name) {
        const WorthKeeping& least = job_.film.worth_keeping;
        if (part.along() < least.along || part.across() < least.across)
            return false;
        kept_.push_back({std::move(name),
                         job_.film.name,
                         part.across(),
                         part.along(),
                         trim,
                         roll.batch,
                         roll.arrow_known,
                         flaws_within(roll, part),
                         {}});
        return true;
    }

    const Sheet& sheet_;
    const Job& job_;
    std::vector<Offcut> kept_;
};

bool is_plain(const std::string& text) {
    const auto is_letter = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); };
    return !text.empty() && is_letter(text.front()) && text.back() != ' ' &&
           std::all_of(text.begin(), text.end(), [&](char c) {
               return is_letter(c) || (c >= '0' && c <= '9') || c == ' ' || c == '.' || c == '_';
           });
}

std::string as_yaml(const std::string& text) {
    if (is_plain(text))
        return text;
    std::string out = "\"";
    for (const char c : text) {
        if (c == '"' || c == '\\')
            out += '\\';
        out += c;
    }
    return out + "\"";
}

std::string entry_of(const Flaw& flaw, const Measures& measures) {
    std::string text = "{from: " + measures.size_with_unit(flaw.from, Rounding::down) +
                       ", to: " + measures.size_with_unit(flaw.to);
    if (flaw.low)
        text += ", low: " + measures.size_with_unit(*flaw.low, Rounding::down);
    if (flaw.high)
        text += ", high: " + measures.size_with_unit(*flaw.high);
    return text + "}";
}

std::string in_mm(Length length) {
    return decimal(length.pm(), 9, 0);
}

/// To the last digit, whatever the currency's coins are.
std::string amount(Money price, int digits) {
    constexpr int exact = 6;
    std::int64_t coin = 1;
    for (int i = digits; i < exact; ++i)
        coin *= 10;
    return to_string(price, price.micros() % coin == 0 ? digits : exact);
}

std::string entry_of(const CostOfLength& cost, int digits) {
    return cost.by == CostOfLength{}.by
               ? amount(cost.price, digits)
               : "{by: " + in_mm(cost.by) + " mm, price: " + amount(cost.price, digits) + "}";
}

Json json_of(const CostOfLength& cost, int digits) {
    if (!(cost.price > Money{}))
        return json_null;
    return JsonObject()
        .add("by_mm", json_mm(cost.by))
        .add("price", json_text(amount(cost.price, digits)))
        .on_one_line();
}

Json json_of(const Flaw& flaw) {
    return JsonObject()
        .add("from_mm", json_mm(flaw.from))
        .add("to_mm", json_mm(flaw.to))
        .add("low_mm", flaw.low ? json_mm(*flaw.low) : json_null)
        .add("high_mm", flaw.high ? json_mm(*flaw.high) : json_null)
        .on_one_line();
}

} // namespace

std::vector<Offcut> offcuts_of(const Sheet& sheet) {
    return Keeping(sheet).all();
}

std::string stock_entry(const Offcut& offcut, const Film& film, const Measures& measures) {
    std::string text = "{name: " + as_yaml(offcut.name) + ", film: " + as_yaml(offcut.film) +
                       ", width: " + measures.size_with_unit(offcut.width, Rounding::down) +
                       ", length: " + measures.size_with_unit(offcut.length, Rounding::down);
    if (offcut.trim != film.trim)
        text += ", trim: " + measures.size_with_unit(offcut.trim);
    if (!offcut.batch.empty())
        text += ", batch: " + as_yaml(offcut.batch);
    if (!offcut.arrow_known)
        text += ", arrow: unknown";
    if (offcut.cost.price > Money{})
        text += ", cost: " + entry_of(offcut.cost, film.money_digits);
    std::string flaws;
    for (const Flaw& flaw : offcut.flaws)
        flaws += (flaws.empty() ? "" : ", ") + entry_of(flaw, measures);
    return text + (flaws.empty() ? "}" : ", flaws: [" + flaws + "]}");
}

Json to_json(const Offcut& offcut, int money_digits) {
    std::vector<Json> flaws;
    for (const Flaw& flaw : offcut.flaws)
        flaws.push_back(json_of(flaw));
    return JsonObject()
        .add("name", json_text(offcut.name))
        .add("film", json_text(offcut.film))
        .add("width_mm", json_mm(offcut.width))
        .add("length_mm", json_mm(offcut.length))
        .add("trim_mm", json_mm(offcut.trim))
        .add("batch", json_text_or_null(offcut.batch))
        .add("arrow_known", json_bool(offcut.arrow_known))
        .add("flaws", json_array(flaws))
        .add("cost", json_of(offcut.cost, money_digits))
        .on_one_line();
}

} // namespace pelt::report
