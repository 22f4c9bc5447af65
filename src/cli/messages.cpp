// SPDX-License-Identifier: MIT
#include "cli/messages.hpp"

#include "model/utf8.hpp"

#include <cstdio>
#include <utility>

namespace pelt::cli {
namespace {

// Bold, yellow and red of ECMA-48's SGR, and back to plain.
constexpr std::string_view bold = "\x1b[1m";
constexpr std::string_view yellow = "\x1b[33m";
constexpr std::string_view red = "\x1b[31m";
constexpr std::string_view plain = "\x1b[0m";

std::string_view word_for(Severity severity) {
    switch (severity) {
    case Severity::warning:
        return "warning: ";
    case Severity::note:
    case Severity::remark:
        return "note: ";
    case Severity::usage:
    case Severity::file:
    case Severity::access:
    case Severity::job:
        return "";
    }
    return "";
}

/// What stands behind the place.
std::string behind_place(const Fault& fault, Unit unit) {
    Fault alone = fault;
    alone.place = {};
    return to_string(alone, false, unit);
}

std::string place_of(const Fault& fault) {
    if (!fault.place.source)
        return "pelt: ";
    std::string text = printable(fault.place.source->name) + ":";
    if (fault.place.line > 0 && fault.place.source->is_table)
        text += cell_name(fault.place.line, fault.place.column) + ":";
    else if (fault.place.line > 0)
        text += std::to_string(fault.place.line) + ":" + std::to_string(fault.place.column) + ":";
    return text + " ";
}

/// The source line and the caret, each with its newline in front.
std::string excerpt_of(const Fault& fault) {
    const std::string whole = to_string(fault, true);
    return whole.substr(to_string(fault, false).size());
}

std::string coloured_excerpt(const std::string& excerpt) {
    const std::size_t caret = excerpt.rfind('\n');
    if (caret == std::string::npos)
        return excerpt;
    return excerpt.substr(0, caret) + std::string(red) + excerpt.substr(caret) + std::string(plain);
}

} // namespace

Messages::Messages(Sink sink, Loudness loudness, bool colour, Unit unit)
    : sink_(std::move(sink)), loudness_(loudness), colour_(colour), unit_(unit) {}

bool Messages::shows(Severity severity) const {
    if (severity <= Severity::remark)
        return loudness_.verbose > 0 && !loudness_.quiet;
    return severity != Severity::warning || !loudness_.quiet;
}

void Messages::tell(const Fault& fault) const {
    if (!shows(fault.severity))
        return;
    const std::string word(word_for(fault.severity));
    if (!colour_) {
        sink_(place_of(fault) + word + behind_place(fault, unit_) + excerpt_of(fault) + "\n");
        return;
    }
    std::string text = std::string(bold) + place_of(fault) + std::string(plain);
    if (!word.empty())
        text += std::string(yellow) + word + std::string(plain);
    sink_(text + behind_place(fault, unit_) + coloured_excerpt(excerpt_of(fault)) + "\n");
}

void Messages::tell(const Faults& faults) const {
    for (const Fault& fault : told_together(faults))
        tell(fault);
}

void Messages::tell_unlisted(const std::string& file, std::size_t count) const {
    if (count > 0)
        sink_(printable(file) + ": and " + std::to_string(count) + " more like these\n");
}

void Messages::say(std::string_view line) const {
    if (!loudness_.quiet)
        sink_("pelt: " + std::string(line) + "\n");
}

void to_standard_error(std::string_view text) {
    std::fwrite(text.data(), 1, text.size(), stderr);
    std::fflush(stderr);
}

} // namespace pelt::cli
