// SPDX-License-Identifier: MIT
// Shipped files spoilt at random: whatever stands in a file, it is read, or every fault of it is a
// sentence with a remedy or a place; nothing is thrown.
#include "order/order.hpp"
#include "read/read.hpp"
#include "shipped.hpp"

#include <doctest/doctest.h>

#include <cstdint>
#include <memory>
#include <string>

namespace pelt::data_test {
namespace {

/// Knuth's 64-bit linear congruence (MMIX; from memory), its upper bits.
class Chance {
public:
    explicit Chance(std::uint64_t seed) : state_(seed * 2 + 1) {}
    std::size_t below(std::size_t end) {
        state_ = state_ * 6364136223846793005U + 1442695040888963407U;
        return (state_ >> 33) % end;
    }

private:
    std::uint64_t state_;
};

const std::vector<std::string> words{"{",    "}",         "[",
                                     "]",    ": ",        ", ",
                                     "\"",   "'",         "#",
                                     "\n",   "\t",        "  ",
                                     "-",    "- ",        "0",
                                     "-1",   "1e9",       "nan",
                                     ".inf", "mm",        "1/0 in",
                                     "%",    "&a ",       "*a",
                                     "<<: ", "!!str ",    "---",
                                     "\xff", "\xe2\x82",  "|",
                                     ">\n",  "null",      "~",
                                     "yes",  "[0, 0]",    "wrap",
                                     "all",  "through: ", "99999999999999999999"};

std::string spoilt(std::string text, Chance& chance) {
    const std::size_t strokes = 1 + chance.below(3);
    for (std::size_t i = 0; i < strokes && !text.empty(); ++i) {
        const std::size_t at = chance.below(text.size());
        const std::size_t length = chance.below(12);
        switch (chance.below(4)) {
        case 0:
            text.erase(at, length);
            break;
        case 1:
            text.insert(at, words[chance.below(words.size())]);
            break;
        case 2:
            text.replace(at, length, words[chance.below(words.size())]);
            break;
        default:
            text.insert(chance.below(text.size()), text.substr(at, length * 4));
            break;
        }
    }
    return text;
}

void expect_sentences(const Faults& faults) {
    for (const Fault& fault : faults) {
        const std::string sentence = to_string(fault);
        CAPTURE(sentence);
        CHECK(fault.what.size() > 5);
        CHECK((!fault.remedy.empty() || fault.place.line > 0));
    }
}

std::shared_ptr<const Source> source(const std::string& text) {
    return std::make_shared<const Source>(Source{"spoiled.yaml", text});
}

/// As far as areas: what is read is developed and gets its tucks.
void examine_vehicle(const std::string& text) {
    const read::Reading<Vehicle> reading = read::vehicle(source(text));
    expect_sentences(reading.faults);
    CHECK(reading.value.has_value() == !stops(reading.faults));
    if (reading.value)
        expect_sentences(order::areas({*reading.value, std::nullopt, {}, {}}).faults);
}

void examine_film(const std::string& text) {
    const read::Reading<Film> reading = read::film(source(text));
    expect_sentences(reading.faults);
    CHECK(reading.value.has_value() == !stops(reading.faults));
}

TEST_CASE("spoiled vehicle files: read, or told in sentences") {
    Chance chance(1);
    for (const std::string& path : files_of("vehicles")) {
        CAPTURE(path);
        const std::string text = text_of(path);
        for (int i = 0; i < 100; ++i) {
            const std::string wrong = spoilt(text, chance);
            CAPTURE(i);
            CHECK_NOTHROW(examine_vehicle(wrong));
        }
    }
}

TEST_CASE("spoiled film files: read, or told in sentences") {
    Chance chance(2);
    for (const std::string& path : files_of("films")) {
        CAPTURE(path);
        const std::string text = text_of(path);
        for (int i = 0; i < 300; ++i) {
            const std::string wrong = spoilt(text, chance);
            CAPTURE(i);
            CHECK_NOTHROW(examine_film(wrong));
        }
    }
}

} // namespace
} // namespace pelt::data_test
