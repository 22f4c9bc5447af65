// SPDX-License-Identifier: MIT
#include "report/marks.hpp"

#include "model/utf8.hpp"
#include "report/words.hpp"

#include <algorithm>

namespace pelt::report {
namespace {

std::size_t characters(const std::string& text) {
    return code_points(text).size();
}

std::string sentence_of(const std::string& panels, const std::string& rest) {
    return panels.empty() ? capitalised(rest) : panels + ": " + rest;
}

bool fits(const std::string& panels, const std::string& rest) {
    return characters(sentence_of(panels, rest)) <= longest_mark;
}

/// The first so many names, and how many more there are.
std::string first_of(const std::vector<std::string>& names, std::size_t count) {
    if (count == 0)
        return std::to_string(names.size()) + (names.size() == 1 ? " panel" : " panels");
    const std::vector<std::string> some(names.begin(),
                                        names.begin() + static_cast<std::ptrdiff_t>(count));
    return listed(some) + " and " + std::to_string(names.size() - count) + " more";
}

GatheredMark& home_of(const Mark& mark, std::vector<GatheredMark>& all) {
    const auto same = std::find_if(all.begin(), all.end(), [&](const GatheredMark& other) {
        return other.what == mark.what && other.remedy == mark.remedy &&
               other.panels.empty() == mark.panel.empty();
    });
    return same == all.end() ? all.emplace_back(GatheredMark{{}, {}, mark.what, mark.remedy})
                             : *same;
}

} // namespace

std::string GatheredMark::text() const {
    return what + (remedy.empty() ? "" : "; " + remedy) + ".";
}

bool GatheredMark::names_all() const {
    return fits(listed(panels), text());
}

std::string GatheredMark::sentence() const {
    for (const auto& names : {with_own, panels})
        if (fits(listed(names), text()))
            return sentence_of(listed(names), text());
    if (panels.empty())
        return capitalised(text());
    std::size_t count = panels.size() - 1;
    while (count > 0 && !fits(first_of(panels, count), text()))
        --count;
    return sentence_of(first_of(panels, count), text());
}

std::vector<GatheredMark> gathered(const std::vector<Mark>& marks) {
    std::vector<GatheredMark> out;
    for (const Mark& mark : marks) {
        GatheredMark& home = home_of(mark, out);
        if (mark.panel.empty())
            continue;
        add_once(home.panels, mark.panel);
        add_once(home.with_own, mark.own.empty() ? mark.panel : mark.panel + " (" + mark.own + ")");
    }
    return out;
}

std::string capitalised(std::string text) {
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z')
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
    return text;
}

} // namespace pelt::report
