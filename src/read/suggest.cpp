// SPDX-License-Identifier: MIT
#include "read/suggest.hpp"

#include "read/quantities.hpp"

#include <algorithm>
#include <cstddef>

namespace pelt::read {
namespace {

/// Longer texts are no slip of a key; comparing them would only take time.
constexpr std::size_t longest_compared = 64;

std::string lower(std::string_view text) {
    std::string out(text);
    for (char& c : out)
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
    return out;
}

/// Blanks, dashes and underscores are the same slip.
std::string folded(std::string_view text) {
    std::string out = lower(text);
    std::replace(out.begin(), out.end(), '_', ' ');
    std::replace(out.begin(), out.end(), '-', ' ');
    return out;
}

} // namespace

int letters_apart(std::string_view a, std::string_view b) {
    std::vector<int> two_back(b.size() + 1);
    std::vector<int> last(b.size() + 1);
    std::vector<int> now(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j)
        now[j] = static_cast<int>(j);
    for (std::size_t i = 1; i <= a.size(); ++i) {
        two_back.swap(last);
        last.swap(now);
        now[0] = static_cast<int>(i);
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const bool same = a[i - 1] == b[j - 1];
            now[j] = std::min({last[j] + 1, now[j - 1] + 1, last[j - 1] + (same ? 0 : 1)});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                now[j] = std::min(now[j], two_back[j - 2] + 1);
        }
    }
    return now[b.size()];
}

std::string nearest(std::string_view word, const std::vector<std::string>& known) {
    if (word.empty() || word.size() > longest_compared)
        return {};
    const std::string meant = folded(word);
    std::string best;
    const auto length = static_cast<int>(word.size());
    int best_distance = std::min(length, std::max(1, length / 3) + 1);
    for (const std::string& candidate : known) {
        if (candidate.size() > longest_compared)
            continue;
        const int distance = letters_apart(meant, folded(candidate));
        if (distance < best_distance) {
            best_distance = distance;
            best = candidate;
        }
    }
    return best;
}

std::string listed(const std::vector<std::string>& words, std::string_view last_joint) {
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (i > 0)
            text += i + 1 == words.size() ? " " + std::string(last_joint) + " " : ", ";
        text += quoted(words[i]);
    }
    return text;
}

std::string did_you_mean(std::string_view word, const std::vector<std::string>& known,
                         std::string_view lead, std::string_view last_joint) {
    if (const std::string near = nearest(word, known); !near.empty())
        return "did you mean " + quoted(near) + "?";
    constexpr std::size_t most = 8;
    if (known.empty())
        return {};
    if (known.size() <= most)
        return std::string(lead) + " " + listed(known, last_joint);
    std::string text(lead);
    for (std::size_t i = 0; i < most; ++i)
        text += (i > 0 ? ", " : " ") + quoted(known[i]);
    return text + " and " + std::to_string(known.size() - most) + " more";
}

} // namespace pelt::read
