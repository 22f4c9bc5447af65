// SPDX-License-Identifier: MIT
#include "develop/edge_words.hpp"

#include "develop/develop.hpp"

#include <charconv>
#include <cmath>
#include <optional>
#include <string>

namespace pelt::develop {
namespace {

bool is_compass(std::string_view word) {
    return word == "top" || word == "bottom" || word == "left" || word == "right";
}

std::string_view faces(Point normal) {
    if (std::abs(normal.y) >= std::abs(normal.x))
        return normal.y > 0 ? "top" : "bottom";
    return normal.x > 0 ? "right" : "left";
}

bool from_girths(const Blank& blank) {
    return !blank.edges.empty() && blank.edges.front().number == "bottom";
}

std::string_view end_of_spine(std::string_view word) {
    if (word == "left")
        return "start";
    return word == "right" ? "end" : word;
}

bool selects(const Blank& blank, const BlankEdge& edge, std::string_view word) {
    if (word == "all")
        return true;
    if (from_girths(blank))
        return edge.number == end_of_spine(word);
    if (is_compass(word))
        return faces(edge.normal) == word;
    return edge.number == word || (!edge.name.empty() && edge.name == word);
}

/// The two numbers of `2-4`.
struct Pair {
    std::size_t from = 0;
    std::size_t to = 0;
};

std::optional<Pair> pair_in(std::string_view word) {
    Pair pair;
    const char* const end = word.data() + word.size();
    const auto [dash, error] = std::from_chars(word.data(), end, pair.from);
    if (error != std::errc{} || dash == end || *dash != '-')
        return std::nullopt;
    const auto [rest, error_to] = std::from_chars(dash + 1, end, pair.to);
    if (error_to != std::errc{} || rest != end)
        return std::nullopt;
    return pair;
}

std::string listed(const Blank& blank) {
    constexpr std::size_t at_most = 12;
    std::string text;
    const std::size_t n = blank.edges.size();
    for (std::size_t i = 0; i < n; ++i) {
        const BlankEdge& edge = blank.edges[i];
        if (n > at_most && edge.name.empty() && i != 0 && i + 1 != n)
            continue;
        text += (text.empty() ? "" : ", ") + edge.number;
        if (!edge.name.empty())
            text += " '" + edge.name + "'";
    }
    return text;
}

std::string advice(const Blank& blank, std::string_view word) {
    if (from_girths(blank))
        return "a panel measured by girths has the edges " + listed(blank);
    if (is_compass(word))
        return "its edges are " + listed(blank);
    const std::size_t n = blank.edges.size();
    const std::optional<Pair> pair = pair_in(word);
    if (pair && (pair->from == 0 || pair->from > n || pair->to == 0 || pair->to > n))
        return "it has the points 1 to " + std::to_string(n);
    if (pair) {
        const std::string reversed = std::to_string(pair->to) + "-" + std::to_string(pair->from);
        const bool meant_reversed = !edges_selected(blank, reversed).empty();
        return "points " + std::to_string(pair->from) + " and " + std::to_string(pair->to) +
               " are not joined in this order; write " +
               (meant_reversed ? reversed : blank.edges[pair->from - 1].number);
    }
    return "write all, top, bottom, left, right or one of its edges: " + listed(blank);
}

} // namespace

std::vector<int> edges_selected(const Blank& blank, std::string_view word) {
    std::vector<int> out;
    for (std::size_t i = 0; i < blank.edges.size(); ++i)
        if (selects(blank, blank.edges[i], word))
            out.push_back(static_cast<int>(i));
    return out;
}

void check_edge_words(const Panel& panel, const Blank& blank, Faults& faults) {
    for (const EdgeRule& rule : panel.edges)
        if (edges_selected(blank, rule.word).empty())
            faults.push_back({Severity::file, rule.place, panel.name,
                              "'" + rule.word + "' is none of its edges",
                              advice(blank, rule.word)});
}

} // namespace pelt::develop
