// SPDX-License-Identifier: MIT
#include "read/suggest.hpp"

#include "read/context.hpp"
#include "read/meanings.hpp"
#include "read/quantities.hpp"

#include <algorithm>
#include <cstddef>
#include <utility>

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

namespace {

std::vector<std::string> words_of(std::string_view text) {
    std::vector<std::string> out(1);
    for (const char c : text)
        if (c == ' ')
            out.emplace_back();
        else
            out.back() += c;
    std::erase_if(out, [](const std::string& word) { return word.size() < 3; });
    return out;
}

/// Those of `known` that the word may stand for, in the order of likeness.
std::vector<std::string> known_by_meaning(std::string_view word,
                                          const std::vector<std::string>& known) {
    std::vector<std::string> out;
    for (const std::string& meant : meant_by(folded(word)))
        if (std::find(known.begin(), known.end(), meant) != known.end())
            out.push_back(meant);
    return out;
}

/// How unlike two words are: 0 where they have a whole word in common, 1 where a word of one begins
/// with one of the other, else by the share of letters that differ.
double unlikeness(std::string_view word, std::string_view candidate) {
    double least = 3;
    for (const std::string& a : words_of(word))
        for (const std::string& b : words_of(candidate)) {
            const bool begins = a.starts_with(b) || b.starts_with(a);
            const auto longer = static_cast<double>(std::max(a.size(), b.size()));
            const double letters = 2 + letters_apart(a, b) / longer;
            least = std::min(least, a == b ? 0 : begins ? 1 : letters);
        }
    return least;
}

/// The likeliest in front; what is not alike at all keeps its order.
std::vector<std::string> by_likeness(std::string_view word, std::vector<std::string> known) {
    constexpr double not_alike = 2.4;
    if (word.size() > longest_compared)
        return known;
    const std::string meant = folded(word);
    std::vector<std::pair<double, std::string>> ranked;
    for (std::string& candidate : known) {
        const double rank = candidate.size() > longest_compared
                                ? not_alike
                                : std::min(not_alike, unlikeness(meant, folded(candidate)));
        ranked.emplace_back(rank, std::move(candidate));
    }
    std::stable_sort(ranked.begin(), ranked.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    known.clear();
    for (auto& [rank, candidate] : ranked)
        known.push_back(std::move(candidate));
    return known;
}

constexpr std::size_t most_named = 8;

/// "LEAD 'a', 'b' … and N more", of more than are named.
std::string first_of(const std::vector<std::string>& words, std::string_view lead) {
    std::string text(lead);
    for (std::size_t i = 0; i < most_named; ++i)
        text += (i > 0 ? ", " : " ") + quoted(words[i]);
    return text + " and " + std::to_string(words.size() - most_named) + " more";
}

} // namespace

std::vector<std::string> likely_meant(std::string_view word,
                                      const std::vector<std::string>& known) {
    const std::string near = nearest(word, known);
    const bool a_slip = !near.empty() && letters_apart(folded(word), folded(near)) <= 1;
    std::vector<std::string> meant = known_by_meaning(word, known);
    if (!near.empty() && (a_slip || meant.empty()))
        return {near};
    return meant;
}

std::string did_you_mean(std::string_view word, const std::vector<std::string>& known,
                         std::string_view lead, std::string_view last_joint) {
    if (const std::vector<std::string> meant = likely_meant(word, known); !meant.empty())
        return "did you mean " + listed(meant) + "?";
    if (known.empty())
        return {};
    if (known.size() <= most_named)
        return std::string(lead) + " " + listed(known, last_joint);
    return first_of(by_likeness(word, known), lead);
}

std::size_t letters_to_compare(std::string_view word, const std::vector<std::string>& known) {
    if (word.size() > longest_compared)
        return 0;
    std::size_t letters = 0;
    for (const std::string& candidate : known)
        letters += candidate.size() > longest_compared ? 0 : candidate.size();
    return 2 * word.size() * letters; // by the letters of the whole, then by those of its words
}

std::string did_you_mean(std::string_view word, const std::vector<std::string>& known,
                         std::string_view lead, Context& context, std::string_view last_joint) {
    if (known.size() <= most_named || context.may_compare(letters_to_compare(word, known)))
        return did_you_mean(word, known, lead, last_joint);
    return first_of(known, lead);
}

} // namespace pelt::read
