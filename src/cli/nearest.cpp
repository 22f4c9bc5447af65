// SPDX-License-Identifier: MIT
#include "cli/nearest.hpp"

#include <algorithm>
#include <cstddef>
#include <utility>

namespace pelt::cli {
namespace {

// Optimal string alignment: the edit distance in which a swap of neighbours is one edit.
// Reference: L. Boytsov, "Indexing methods for approximate dictionary searching", ACM JEA 16
// (2011), section 2.
std::size_t edits_between(std::string_view a, std::string_view b) {
    std::vector<std::vector<std::size_t>> d(a.size() + 1, std::vector<std::size_t>(b.size() + 1));
    for (std::size_t i = 0; i <= a.size(); ++i)
        d[i][0] = i;
    for (std::size_t j = 0; j <= b.size(); ++j)
        d[0][j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i)
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t change = a[i - 1] == b[j - 1] ? 0 : 1;
            d[i][j] = std::min({d[i - 1][j] + 1, d[i][j - 1] + 1, d[i - 1][j - 1] + change});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                d[i][j] = std::min(d[i][j], d[i - 2][j - 2] + 1);
        }
    return d[a.size()][b.size()];
}

} // namespace

std::vector<std::string> nearest(std::string_view typed, const std::vector<std::string>& words) {
    constexpr std::size_t longest_typed = 100;
    if (typed.size() > longest_typed)
        return {};
    std::vector<std::pair<std::size_t, std::string>> near;
    for (const std::string& word : words) {
        const std::size_t edits = edits_between(typed, word);
        if (edits <= std::max<std::size_t>(1, word.size() / 3) && edits < word.size())
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
