// SPDX-License-Identifier: MIT
#include "read/text_check.hpp"

#include "model/limits.hpp"
#include "model/utf8.hpp"

#include <algorithm>
#include <optional>
#include <string_view>
#include <utility>

namespace pelt::read {
namespace {

std::optional<std::size_t> found(std::size_t at) {
    return at == std::string::npos ? std::nullopt : std::optional(at);
}

std::optional<std::size_t> malformed(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const Decoded next = decoded(text, at);
        if (!next.well_formed)
            return at;
        at += next.bytes;
    }
    return std::nullopt;
}

std::optional<std::size_t> lone_return(std::string_view text) {
    for (std::size_t at = text.find('\r'); at != std::string_view::npos;
         at = text.find('\r', at + 1))
        if (at + 1 >= text.size() || text[at + 1] != '\n')
            return at;
    return std::nullopt;
}

/// Control characters but NUL, tab and line ends, which have sentences of their own.
std::optional<std::size_t> control(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const Decoded next = decoded(text, at);
        const bool usual = next.c == 0 || next.c == '\t' || next.c == '\n' || next.c == '\r';
        if (next.well_formed && !usual && is_control(next.c))
            return at;
        at += next.bytes;
    }
    return std::nullopt;
}

std::optional<std::size_t> tab_in_indent(std::string_view text) {
    for (std::size_t at = text.find('\t'); at != std::string_view::npos;
         at = text.find('\t', at + 1)) {
        const std::size_t before = text.find_last_not_of(" \t", at);
        const std::size_t after = text.find_first_not_of(" \t\r", at);
        const bool leads = before == std::string_view::npos || text[before] == '\n';
        const bool blank_line = after == std::string_view::npos || text[after] == '\n';
        if (leads && !blank_line)
            return at;
        at = std::min(after, text.size()) - 1;
    }
    return std::nullopt;
}

/// Where a line begins that is longer than the parser can hold.
std::optional<std::size_t> long_line(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        if (end - at > limit::line_bytes)
            return at;
        at = end + 1;
    }
    return std::nullopt;
}

class Check {
public:
    Check(const std::shared_ptr<const Source>& source, Faults& faults)
        : source_(source), faults_(faults) {}

    bool refuse(std::optional<std::size_t> at, std::string what, const char* remedy) {
        if (!at)
            return false;
        faults_.push_back({Severity::file, place_of(source_, *at), "", std::move(what), remedy});
        return true;
    }

private:
    const std::shared_ptr<const Source>& source_;
    Faults& faults_;
};

} // namespace

Place place_of(const std::shared_ptr<const Source>& source, std::size_t byte) {
    const std::string_view before = std::string_view(source->text).substr(0, byte);
    const std::size_t line_start = before.rfind('\n') + 1; // npos + 1 is 0
    int column = 1;
    for (std::size_t at = line_start; at < before.size(); ++column)
        at += decoded(source->text, at).bytes;
    return {source, static_cast<int>(std::count(before.begin(), before.end(), '\n')) + 1, column};
}

Fault too_large(const std::shared_ptr<const Source>& source) {
    return {Severity::file,
            {source, 0, 0},
            "",
            "is larger than 8 MiB",
            "leave out points that lie closer than a millimeter"};
}

bool check_text(const std::shared_ptr<const Source>& source, Faults& faults) {
    const std::string& text = source->text;
    if (text.size() > limit::file_bytes) {
        faults.push_back(too_large(source));
        return false;
    }
    Check check(source, faults);
    if (text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF"))
        return !check.refuse(0, "the file is UTF-16 text", "save it as UTF-8");
    const std::size_t nul = text.find('\0');
    if (check.refuse(found(nul), "the file holds a zero byte: it is not text",
                     "give a text file, saved as UTF-8") ||
        check.refuse(malformed(text), "this is not UTF-8 text", "save the file as UTF-8"))
        return false;
    if (check.refuse(long_line(text),
                     "this line is longer than " + limit::in_groups(limit::line_bytes) + " bytes",
                     "break it after a comma, or put every entry on a line of its own"))
        return false;
    bool good = true;
    if (text.starts_with("\xEF\xBB\xBF"))
        good = !check.refuse(0, "the file begins with a byte order mark",
                             "save it as UTF-8 without one");
    good = !check.refuse(lone_return(text), "the line ends in a carriage return alone",
                         "save the file with the line ends of Unix or Windows") &&
           good;
    good = !check.refuse(control(text), "here is a control character", "take it out") && good;
    return !check.refuse(tab_in_indent(text), "a tab stands in the indent", "indent with blanks") &&
           good;
}

} // namespace pelt::read
