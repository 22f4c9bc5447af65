// SPDX-License-Identifier: MIT
#include "model/fault.hpp"

#include "model/marked_length.hpp"
#include "model/utf8.hpp"

#include <algorithm>

namespace pelt {
namespace {

std::string line_of(const Source& source, int line) {
    std::size_t begin = 0;
    for (int n = 1; n < line; ++n) {
        const std::size_t end = source.text.find('\n', begin);
        if (end == std::string::npos)
            return {};
        begin = end + 1;
    }
    std::string text = source.text.substr(begin, source.text.find('\n', begin) - begin);
    if (!text.empty() && text.back() == '\r')
        text.pop_back();
    return text;
}

/// Source lines are shown whole up to this many characters, else the part around the place.
constexpr std::size_t widest_line = 100;
constexpr std::size_t kept_before_place = 60;

/// The source line and a caret below it. Tabs stand in both, so that they move both alike.
std::string excerpt(const std::string& line, std::size_t column) {
    const std::u32string text = code_points(line);
    const std::size_t place = std::min(column - 1, text.size());
    const bool cut = text.size() > widest_line;
    const std::size_t begin = cut && place > kept_before_place ? place - kept_before_place : 0;
    const std::size_t end = cut ? std::min(text.size(), begin + widest_line) : text.size();
    std::string shown = begin > 0 ? "..." : "";
    std::string caret(shown.size(), ' ');
    for (std::size_t i = begin; i < end; ++i) {
        const bool tab = text[i] == U'\t';
        shown += tab ? "\t" : printable(utf8(text[i]));
        if (i < place)
            caret += tab ? std::string("\t")
                         : std::string(static_cast<std::size_t>(display_width(text[i])), ' ');
    }
    return "\n  " + shown + (end < text.size() ? "..." : "") + "\n  " + caret + "^";
}

std::string prefix_of(const Fault& fault) {
    std::string text;
    if (fault.place.source) {
        text += fault.place.source->name + ":";
        if (fault.place.line > 0 && fault.place.source->is_table)
            text += cell_name(fault.place.line, fault.place.column) + ":";
        else if (fault.place.line > 0)
            text +=
                std::to_string(fault.place.line) + ":" + std::to_string(fault.place.column) + ":";
        text += " ";
    }
    if (!fault.panel.empty())
        text += "panel '" + fault.panel + "': ";
    return text;
}

} // namespace

std::string own_of(const Fault& fault) {
    const std::size_t begin = fault.common.size() + 2; // behind ": "
    return !fault.common.empty() && begin < fault.what.size() ? fault.what.substr(begin) : "";
}

bool stops(const Faults& faults) {
    return std::any_of(faults.begin(), faults.end(),
                       [](const Fault& f) { return f.severity > Severity::warning; });
}

Faults told_together(const Faults& faults) {
    const auto own = [](const Fault& fault) {
        const std::string of_it = own_of(fault);
        return of_it.empty() ? fault.panel : fault.panel + " " + of_it;
    };
    Faults out;
    for (const Fault& fault : faults) {
        const auto alike = std::find_if(out.begin(), out.end(), [&](const Fault& other) {
            return !fault.common.empty() && other.common == fault.common &&
                   other.severity == fault.severity && other.remedy == fault.remedy &&
                   other.place.source == fault.place.source;
        });
        if (alike == out.end()) {
            out.push_back(fault);
            continue;
        }
        if (alike->panel == fault.panel && alike->what == fault.what)
            continue;
        if (!alike->panel.empty()) {
            alike->what = alike->common + ": " + own(*alike);
            alike->panel.clear();
            alike->place.line = 0;
        }
        if (alike->what.find(": " + own(fault)) == std::string::npos &&
            alike->what.find("; " + own(fault)) == std::string::npos)
            alike->what += "; " + own(fault);
    }
    return out;
}

std::string sentence_of(const Fault& fault, Unit unit) {
    return in_unit(fault.remedy.empty() ? fault.what : fault.what + "; " + fault.remedy, unit);
}

std::string cell_name(int row, int column) {
    constexpr int letters = 26;
    std::string name;
    for (int rest = column; rest > 0; rest = (rest - 1) / letters)
        name.insert(name.begin(), static_cast<char>('A' + (rest - 1) % letters));
    return name + std::to_string(row);
}

std::string to_string(const Fault& fault, bool with_source, Unit unit) {
    const std::string text = printable(prefix_of(fault) + sentence_of(fault, unit));
    if (!with_source || !fault.place.source || fault.place.line == 0 ||
        fault.place.source->is_table)
        return text;
    const std::string line = line_of(*fault.place.source, fault.place.line);
    if (line.empty())
        return text;
    return text + excerpt(line, static_cast<std::size_t>(std::max(fault.place.column, 1)));
}

} // namespace pelt
