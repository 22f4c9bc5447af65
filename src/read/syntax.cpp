// SPDX-License-Identifier: MIT
#include "read/syntax.hpp"

#include "read/brackets.hpp"
#include "read/decimal.hpp"
#include "read/text_check.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

namespace pelt::read {
namespace {

using SourceFile = std::shared_ptr<const Source>;

/// A line of the file that holds more than blanks and a comment.
struct Line {
    std::size_t start = 0; ///< of the first character that is not a blank
    std::size_t indent = 0;
    std::string_view text; ///< from there, without blanks at the end
};

/// The lines up to and with the one that holds `byte`, at most the last `most` of them.
std::vector<Line> lines_up_to(std::string_view text, std::size_t byte, std::size_t most) {
    std::vector<Line> out;
    std::size_t end = std::min(text.find('\n', std::min(byte, text.size())), text.size());
    for (;;) {
        const std::size_t begin = end == 0 ? 0 : text.rfind('\n', end - 1) + 1;
        std::string_view line = text.substr(begin, end - begin);
        const std::size_t indent = std::min(line.find_first_not_of(" \t\r"), line.size());
        line.remove_prefix(indent);
        while (!line.empty() && (line.back() == ' ' || line.back() == '\r'))
            line.remove_suffix(1);
        if (!line.empty() && line.front() != '#')
            out.insert(out.begin(), {begin + indent, indent, line});
        if (begin == 0 || out.size() == most)
            return out;
        end = begin - 1;
    }
}

Fault fault_at(const SourceFile& source, std::size_t byte, std::string what, std::string remedy) {
    return {Severity::file, place_of(source, byte), "", std::move(what), std::move(remedy)};
}

Fault told(const SourceFile& source, const Unpaired& found) {
    const std::string mark(1, source->text[found.byte]);
    switch (found.kind) {
    case Unpaired::Kind::open_quote:
        return fault_at(source, found.byte, "the quote opened here is not closed on its line",
                        "close it with " + mark);
    case Unpaired::Kind::open_bracket:
        return fault_at(source, found.byte, "the bracket '" + mark + "' opened here is not closed",
                        mark == "[" ? "close it with ]" : "close it with }");
    case Unpaired::Kind::stray_closing:
        return fault_at(source, found.byte, "the bracket '" + mark + "' closes nothing",
                        "take it out, or open it before");
    case Unpaired::Kind::wrong_closing:
        break;
    }
    const std::string opened(1, source->text[found.partner]);
    return fault_at(source, found.byte,
                    "'" + mark + "' stands here while '" + opened + "' of line " +
                        std::to_string(place_of(source, found.partner).line) + " is still open",
                    "close that one first with " + std::string(opened == "[" ? "]" : "}"));
}

std::optional<std::size_t> colon_without_blank(std::string_view line) {
    const std::size_t colon = line.find(':');
    if (colon == std::string_view::npos || !lacks_blank(line))
        return std::nullopt;
    return colon;
}

bool is_indented_below_a_value(const std::vector<Line>& lines) {
    return lines.size() == 2 && lines[1].indent > lines[0].indent &&
           lines[0].text.find(": ") != std::string_view::npos;
}

Fault indented_too_far(const SourceFile& source, const Line& line) {
    return fault_at(source, line.start,
                    "this line is indented further than the one above it, which has its value "
                    "already",
                    "indent both alike");
}

Fault does_not_go_on(const SourceFile& source, std::size_t byte) {
    const std::vector<Line> lines = lines_up_to(source->text, byte, 2);
    if (is_indented_below_a_value(lines) && byte == lines[1].start)
        return indented_too_far(source, lines[1]);
    return fault_at(source, byte, "this does not go on what stands above",
                    "begin it in the same column as the keys or dashes that it belongs to");
}

/// A colon where no key can be. The slip is often in the line above.
Fault colon_told(const SourceFile& source, std::size_t byte) {
    const std::vector<Line> lines = lines_up_to(source->text, byte, 2);
    for (const Line& line : lines)
        if (const auto colon = colon_without_blank(line.text))
            return fault_at(source, line.start + *colon, "after the colon a blank is missing",
                            "put one between the key and its value");
    if (is_indented_below_a_value(lines))
        return indented_too_far(source, lines[1]);
    if (lines.size() == 2 && lines[0].text.find(':') == std::string_view::npos &&
        lines[0].indent <= lines[1].indent)
        return fault_at(source, lines[0].start, "this line is neither a key nor a value",
                        "write it as KEY: VALUE, or take it out");
    return fault_at(source, byte, "a second colon stands in this line",
                    "put one KEY: VALUE on a line, and texts that hold a colon in quotes");
}

bool is_one_of(std::string_view reason, std::initializer_list<std::string_view> words) {
    return std::any_of(words.begin(), words.end(), [&](std::string_view word) {
        return reason.substr(0, word.size()) == word;
    });
}

Fault told(const SourceFile& source, const GaveUp& gave_up) {
    const auto fault = [&](std::string what, std::string remedy) {
        return fault_at(source, gave_up.byte, std::move(what), std::move(remedy));
    };
    const std::string_view why = gave_up.reason;
    if (is_one_of(why, {"illegal map value"}))
        return colon_told(source, gave_up.byte);
    if (is_one_of(why, {"unknown escape", "bad character found while scanning hex", "invalid uni"}))
        return fault("a backslash in double quotes begins a code that is not known",
                     "put the text in single quotes");
    if (is_one_of(why, {"unknown token"}))
        return fault("a text cannot begin with this character", "put the text in quotes");
    if (is_one_of(why, {"illegal block entry"}))
        return fault("a list with dashes cannot begin here",
                     "begin it on a line of its own, or write it in brackets");
    if (is_one_of(why, {"end of map not found", "end of sequence not found", "illegal map key"}))
        return does_not_go_on(source, gave_up.byte);
    if (is_one_of(why, {"end of map flow", "end of sequence flow", "illegal flow end"}))
        return fault("a comma or a bracket is missing here",
                     "put commas between entries, and close every bracket");
    if (is_one_of(why, {"illegal tab"}))
        return fault("a tab stands in the indent", "indent with blanks");
    if (is_one_of(why, {"YAML directive", "bad YAML", "YAML major", "repeated", "TAG directive"}))
        return fault("lines that begin with % are not read", "take this line out");
    if (is_one_of(why, {"tag ", "illegal character found while scanning tag", "end of verbatim",
                        "cannot assign multiple tags"}))
        return fault("tags (!) are not read", "write the plain value");
    if (is_one_of(why, {"alias", "anchor", "cannot assign multiple", "the referenced anchor",
                        "illegal character found while scanning a", "invalid a"}))
        return fault("anchors (&) and aliases (*) are not read", "write the value itself");
    return fault("this is not YAML", "check the indent, the colons and the brackets up to here");
}

} // namespace

bool lacks_blank(std::string_view text) {
    const std::size_t colon = text.find(':');
    if (colon == std::string_view::npos || colon == 0 || colon + 1 >= text.size() ||
        !is_letter(text.front()))
        return false;
    const char next = text[colon + 1];
    return next != ' ' && next != ':' && next != '/' && next != '\\';
}

Fault explained(const std::shared_ptr<const Source>& source, const GaveUp& gave_up) {
    if (const auto unpaired = find_unpaired(source->text))
        return told(source, *unpaired);
    return told(source, gave_up);
}

} // namespace pelt::read
