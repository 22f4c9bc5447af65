// SPDX-License-Identifier: MIT
#include "model/fault.hpp"

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

std::string prefix_of(const Fault& fault) {
    std::string text;
    if (fault.place.source) {
        text += fault.place.source->name + ":";
        if (fault.place.line > 0)
            text +=
                std::to_string(fault.place.line) + ":" + std::to_string(fault.place.column) + ":";
        text += " ";
    }
    if (!fault.panel.empty())
        text += "panel '" + fault.panel + "': ";
    return text;
}

} // namespace

bool stops(const Faults& faults) {
    return std::any_of(faults.begin(), faults.end(),
                       [](const Fault& f) { return f.severity > Severity::warning; });
}

std::string to_string(const Fault& fault, bool with_source) {
    std::string text = prefix_of(fault) + fault.what;
    if (!fault.remedy.empty())
        text += "; " + fault.remedy;
    if (!with_source || !fault.place.source || fault.place.line == 0)
        return text;
    const std::string line = line_of(*fault.place.source, fault.place.line);
    if (line.empty())
        return text;
    text += "\n  " + line + "\n  ";
    return text + std::string(static_cast<std::size_t>(fault.place.column - 1), ' ') + "^";
}

} // namespace pelt
