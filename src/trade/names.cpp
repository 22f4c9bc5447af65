// SPDX-License-Identifier: MIT
// A name is cut into words; every stretch of them that a row of the table could be is tried, the
// one that ends last first. The cost of a name is phrases × words², a thousand comparisons or so.
#include "trade/names.hpp"

#include <algorithm>
#include <array>

namespace pelt::trade {
namespace {

using Words = std::vector<std::string>;
using View = std::span<const std::string>;

// Words that may stand beside what a panel is without changing it.
constexpr auto where = std::to_array<std::string_view>(
    {"front", "rear", "side", "corner", "cab", "box", "panel", "skin"});
// Words that no row of the table needs: of two halves of a panel each is what the whole is.
constexpr auto set_aside =
    std::to_array<std::string_view>({"left", "right", "upper", "lower", "top", "bottom", "middle",
                                     "center", "centre", "inner", "outer", "main", "part", "half"});

bool is_set_aside(std::string_view word) {
    return std::find(set_aside.begin(), set_aside.end(), word) != set_aside.end();
}

/// Letters of other scripts are letters too.
bool is_letter(char c) {
    return (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80;
}

/// In lower case, without numbers and what is set aside.
Words words_in(std::string_view text) {
    Words words(1);
    for (char c : text) {
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
        if (is_letter(c))
            words.back() += c;
        else if (c != '\'' && !words.back().empty())
            words.emplace_back();
    }
    std::erase_if(words, [](const std::string& w) { return w.empty() || is_set_aside(w); });
    return words;
}

/// "door, front" is a front door.
Words place_first(Words words) {
    if (words.size() > 1 && (words.back() == "front" || words.back() == "rear"))
        std::rotate(words.begin(), words.end() - 1, words.end());
    return words;
}

/// The same word, or its plural.
bool is_word(std::string_view written, std::string_view word) {
    if (!written.starts_with(word))
        return false;
    const std::string_view rest = written.substr(word.size());
    return rest.empty() || rest == "s" || rest == "es";
}

std::vector<std::string> split(std::string_view list) {
    constexpr std::string_view joint = " | ";
    std::vector<std::string> out;
    while (!list.empty()) {
        const std::size_t end = std::min(list.find(joint), list.size());
        out.emplace_back(list.substr(0, end));
        list.remove_prefix(std::min(list.size(), end + joint.size()));
    }
    return out;
}

/// A phrase of a table, cut into its words.
struct Phrase {
    Words words;
    const PanelName* name = nullptr;          ///< none: it is ambiguous
    const AmbiguousName* ambiguous = nullptr; ///< none: it is a name
};

std::vector<Phrase> all_phrases() {
    std::vector<Phrase> out;
    for (const PanelName& row : panel_names()) {
        out.push_back({words_in(row.word), &row, nullptr});
        for (const std::string& other : split(row.others))
            out.push_back({words_in(other), &row, nullptr});
    }
    for (const AmbiguousName& row : ambiguous_names())
        for (const std::string& phrase : split(row.names))
            out.push_back({words_in(phrase), nullptr, &row});
    return out;
}

const std::vector<Phrase>& phrases() {
    static const std::vector<Phrase> all = all_phrases();
    return all;
}

const Phrase* phrase_of(View written) {
    for (const Phrase& phrase : phrases())
        if (std::equal(written.begin(), written.end(), phrase.words.begin(), phrase.words.end(),
                       is_word))
            return &phrase;
    return nullptr;
}

bool only_where(View words) {
    return std::all_of(words.begin(), words.end(), [](const std::string& word) {
        return std::any_of(where.begin(), where.end(),
                           [&](std::string_view w) { return is_word(word, w); });
    });
}

std::optional<LiesOn> lies_by_words(View words) {
    for (const std::string& word : words) {
        if (word == "front")
            return LiesOn::front;
        if (word == "rear")
            return LiesOn::rear;
        if (word == "side")
            return LiesOn::side;
    }
    return std::nullopt;
}

Named told_by(const Phrase& phrase, View all) {
    if (phrase.ambiguous != nullptr)
        return {std::nullopt, std::nullopt, std::nullopt, split(phrase.ambiguous->could_be)};
    const PanelName& row = *phrase.name;
    return {row.kind, row.lies, lies_by_words(all), {}};
}

std::optional<Named> found_in(const Words& words) {
    const View all(words);
    for (std::size_t end = words.size(); end > 0 && only_where(all.subspan(end)); --end)
        for (std::size_t begin = 0; begin < end; ++begin)
            if (only_where(all.first(begin)))
                if (const Phrase* phrase = phrase_of(all.subspan(begin, end - begin)))
                    return told_by(*phrase, all);
    return std::nullopt;
}

} // namespace

Named named(std::string_view name) {
    const Words words = place_first(words_in(name));
    return found_in(words).value_or(Named{});
}

bool is_badge(std::string_view hardware) {
    const Words words = words_in(hardware);
    return std::any_of(words.begin(), words.end(),
                       [](const std::string& word) { return is_word(word, "badge"); });
}

} // namespace pelt::trade
