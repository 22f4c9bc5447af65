// SPDX-License-Identifier: MIT
#include "cli/nearest.hpp"

#include "read/suggest.hpp"

#include <algorithm>
#include <utility>

namespace pelt::cli {
std::vector<std::string> nearest(std::string_view typed, const std::vector<std::string>& words) {
    constexpr std::size_t longest_typed = 100;
    if (typed.size() > longest_typed)
        return {};
    std::vector<std::pair<int, std::string>> near;
    for (const std::string& word : words) {
        const int letters = static_cast<int>(word.size());
        const int edits = read::letters_apart(typed, word);
        if (edits <= std::max(1, letters / 3) && edits < letters)
            near.emplace_back(edits, word);
    }
    std::stable_sort(near.begin(), near.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<std::string> out;
    for (const auto& [edits, word] : near)
        if (out.size() < 3 && edits <= near.front().first + 1)
            out.push_back(word);
    return out;
}

std::string did_you_mean(const std::vector<std::string>& words, std::string_view before) {
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i)
        text += (i == 0                  ? "did you mean "
                 : i + 1 == words.size() ? " or "
                                         : ", ") +
                ("'" + std::string(before) + words[i] + "'");
    return text.empty() ? text : text + "?";
}

} // namespace pelt::cli
