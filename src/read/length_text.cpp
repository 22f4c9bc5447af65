// SPDX-License-Identifier: MIT
// The grammar of a written length:
//   length  := [sign] amount [unit] | [sign] amount feet amount [inches]
//   amount  := decimal | whole (blank | '-') whole '/' whole | whole '/' whole
#include "read/decimal.hpp"
#include "read/quantities.hpp"

#include <array>
#include <utility>

namespace pelt::read {
namespace {

constexpr std::string_view kind = "a length";
constexpr std::string_view examples = "write it like 25, 25 mm, 2.5 ft, 23 1/2 in or 5 ft 3 in";
constexpr std::string_view unit_list = "the units are mm, cm, m, in, ft and yd";
constexpr std::int64_t longest_km = 1000;

struct Fraction {
    std::int64_t over = 0;
    std::int64_t under = 1;
};

struct Amount {
    Decimal number;
    Fraction fraction;
    bool has_fraction = false;
};

constexpr std::array<std::pair<std::string_view, Unit>, 6> marks{{
    {"'", Unit::ft},
    {"\u2032", Unit::ft},
    {"\u2019", Unit::ft},
    {"\"", Unit::in},
    {"\u2033", Unit::in},
    {"\u201D", Unit::in},
}};

/// Names that are not read, and what to write instead.
constexpr std::array<std::pair<std::string_view, std::string_view>, 20> other_names{{
    {"millimetre", "mm"}, {"millimetres", "mm"}, {"millimeter", "mm"}, {"millimeters", "mm"},
    {"centimetre", "cm"}, {"centimetres", "cm"}, {"centimeter", "cm"}, {"centimeters", "cm"},
    {"metre", "m"},       {"metres", "m"},       {"meter", "m"},       {"meters", "m"},
    {"inch", "in"},       {"inches", "in"},      {"foot", "ft"},       {"feet", "ft"},
    {"yard", "yd"},       {"yards", "yd"},       {"yds", "yd"},        {"ins", "in"},
}};

std::string unit_remedy(std::string word) {
    for (char& c : word)
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
    if (unit_named(word))
        return "write " + word;
    for (const auto& [name, unit] : other_names)
        if (name == word)
            return "write " + std::string(unit);
    return std::string(unit_list);
}

class LengthText {
public:
    LengthText(std::string_view text, Unit bare) : text_(text), rest_(trimmed(text)), bare_(bare) {}

    Parsed<WrittenLength> read() {
        if (auto slip = usual_slip(rest_, kind))
            return *slip;
        const bool negative = rest_.front() == '-';
        if (negative || rest_.front() == '+')
            rest_.remove_prefix(1);
        Parsed<WrittenLength> made = measure();
        if (made.value && negative)
            made.value->length = Length{} - made.value->length;
        return made;
    }

private:
    Refusal refused(const std::string& why, std::string remedy) const {
        return refusal(text_, kind, why, remedy.empty() ? std::string(examples) : remedy);
    }

    Parsed<WrittenLength> measure() {
        const Parsed<Amount> first = take_amount();
        if (!first.value)
            return first.refusal;
        const Parsed<std::optional<Unit>> unit = take_unit();
        if (!unit.value)
            return unit.refusal;
        skip_blanks(rest_);
        if (!rest_.empty())
            return feet_and_inches(*first.value, *unit.value);
        const Unit meant = unit.value->value_or(bare_);
        const Parsed<Length> length = exactly(*first.value, meant);
        if (!length.value)
            return length.refusal;
        return WrittenLength{*length.value, meant};
    }

    Parsed<WrittenLength> feet_and_inches(const Amount& feet, std::optional<Unit> unit) {
        if (!unit && is_digit(rest_.front()))
            return refused("it holds two numbers",
                           "write thousands without a blank, and fractions like 23 1/2 in");
        if (!is_digit(rest_.front()))
            return refused("what follows the number is not a unit", std::string(unit_list));
        if (unit != Unit::ft)
            return refused("it holds two measures", "give it in one unit, or in feet and inches");
        const Parsed<Amount> inches = take_amount();
        if (!inches.value)
            return inches.refusal;
        const Parsed<std::optional<Unit>> second = take_unit();
        if (!second.value)
            return second.refusal;
        skip_blanks(rest_);
        if (second.value->value_or(Unit::mm) != Unit::in || !rest_.empty())
            return refused("after feet come inches and nothing else",
                           "write it like 5 ft 3 1/2 in");
        if (feet.has_fraction || feet.number.decimals > 0)
            return refused("feet before inches are whole", "write it like 5 ft 3 1/2 in");
        return joined(feet, *inches.value);
    }

    Parsed<WrittenLength> joined(const Amount& feet, const Amount& inches) const {
        const Parsed<Length> long_part = exactly(feet, Unit::ft);
        const Parsed<Length> short_part = exactly(inches, Unit::in);
        if (!long_part.value)
            return long_part.refusal;
        if (!short_part.value)
            return short_part.refusal;
        if (*short_part.value >= length_of(Unit::ft))
            return refused("inches after feet stay below 12", "write it like 5 ft 3 1/2 in");
        return WrittenLength{*long_part.value + *short_part.value, Unit::in};
    }

    Parsed<Amount> take_amount() {
        const Parsed<Decimal> number = decimal();
        if (!number.value)
            return number.refusal;
        Amount out{*number.value, {}, false};
        if (rest_.starts_with('/')) {
            out.number = {};
            return with_fraction(out, *number.value);
        }
        const std::string_view before = rest_;
        if (rest_.starts_with('-'))
            rest_.remove_prefix(1);
        skip_blanks(rest_);
        if (rest_ != before && !rest_.empty() && is_digit(rest_.front())) {
            const Parsed<Decimal> over = decimal();
            if (over.value && rest_.starts_with('/'))
                return with_fraction(out, *over.value);
        }
        rest_ = before;
        return out;
    }

    Parsed<Amount> with_fraction(Amount out, const Decimal& over) {
        rest_.remove_prefix(1);
        const Parsed<Decimal> under = decimal();
        if (!under.value)
            return under.refusal;
        if (over.decimals > 0 || under.value->decimals > 0 || out.number.decimals > 0)
            return refused("a fraction is made of whole numbers", "write it like 23 1/2 in");
        if (under.value->units == 0)
            return refused("it divides by 0", "write it like 23 1/2 in");
        if (out.number.units > 0 && over.units >= under.value->units)
            return refused("the fraction after a whole number is less than one",
                           "write it like 23 1/2 in");
        out.fraction = {over.units, under.value->units};
        out.has_fraction = true;
        return out;
    }

    Parsed<Decimal> decimal() {
        Parsed<Decimal> number = take_decimal(rest_, text_, kind);
        if (!number.value && number.refusal.remedy.empty())
            number.refusal.remedy = std::string(examples);
        return number;
    }

    Parsed<std::optional<Unit>> take_unit() {
        skip_blanks(rest_);
        for (const auto& [mark, unit] : marks)
            if (rest_.starts_with(mark)) {
                rest_.remove_prefix(mark.size());
                return std::optional(unit);
            }
        std::size_t end = 0;
        while (end < rest_.size() && is_letter(rest_[end]))
            ++end;
        const std::string word(rest_.substr(0, end));
        if (word.empty())
            return std::optional<Unit>{};
        const auto unit = unit_named(word);
        if (!unit)
            return refused(quoted(word) + " is not a unit", unit_remedy(word));
        rest_.remove_prefix(end);
        return unit;
    }

    Parsed<Length> exactly(const Amount& amount, Unit unit) const {
        const std::int64_t one = length_of(unit).pm();
        const auto whole = amount.number.times(one);
        const Int128 over = static_cast<Int128>(amount.fraction.over) * one;
        const Int128 part = over / amount.fraction.under;
        const Int128 longest = Int128{longest_km} * 1'000'000 * length_of(Unit::mm).pm();
        if (part > longest ||
            amount.number.value() * static_cast<double>(one) > static_cast<double>(longest))
            return refused("it is longer than 1000 km", "");
        if (!whole || over % amount.fraction.under != 0)
            return refused("it is finer than can be kept exactly", "give fewer decimals, or a "
                                                                   "fraction in halves, quarters, "
                                                                   "eighths ... of an inch");
        return Length::from_pm(*whole + static_cast<std::int64_t>(part));
    }

    std::string_view text_;
    std::string_view rest_;
    Unit bare_;
};

} // namespace

Parsed<WrittenLength> parse_length(std::string_view text, Unit bare) {
    return LengthText(text, bare).read();
}

} // namespace pelt::read
