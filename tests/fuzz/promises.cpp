// SPDX-License-Identifier: MIT
#include "fuzzed.hpp"
#include "model/utf8.hpp"

namespace pelt::fuzzed {
namespace {

/// Of a well-formed character; the first byte that is not part of one is none.
std::size_t printed_at(std::string_view text, std::size_t at) {
    const Decoded found = decoded(text, at);
    if (!found.well_formed || (is_control(found.c) && found.c != U'\n'))
        return 0;
    return found.bytes;
}

} // namespace

void expect(bool holds, const std::string& promise) {
    if (!holds)
        throw Broken(promise);
}

void expect_printable(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t bytes = printed_at(text, at);
        expect(bytes > 0, "no character that may be printed at byte " + std::to_string(at) +
                              " of: " + std::string(text));
        at += bytes;
    }
}

void expect_sentences(const Faults& faults) {
    for (const Fault& fault : faults) {
        const std::string sentence = to_string(fault);
        expect(fault.what.size() > 5, "no sentence: " + sentence);
        expect(!fault.remedy.empty() || fault.place.line > 0,
               "neither a place nor what to do: " + sentence);
        for (const Unit unit : {Unit::mm, Unit::in})
            expect_printable(to_string(fault, false, unit));
    }
}

} // namespace pelt::fuzzed
