// SPDX-License-Identifier: MIT
#include "read/edges.hpp"

#include "read/edge_words.hpp"

#include <algorithm>

namespace pelt::read {
namespace {

/// A length in place of a map: the tuck of the edges named so.
std::optional<EdgeRule> tuck_alone(const Entry& entry, Context& context) {
    const auto tuck = length_value(entry.value, *find_key(In::edge, "tuck"),
                                   "edge " + quoted(entry.key), entry.place, context);
    if (!tuck)
        return std::nullopt;
    EdgeRule rule;
    rule.word = entry.key;
    rule.place = entry.place;
    rule.wrap = tuck->length.ceil_um();
    return rule;
}

std::optional<EdgeRule> rule_of(const Entry& entry, const Names& hardware, Context& context) {
    if (entry.value.kind == Node::Kind::scalar && begins_like_a_length(entry.value.text))
        return tuck_alone(entry, context);
    const std::size_t mark = context.mark();
    const Fields fields(entry.value, In::edge, "edge " + quoted(entry.key), entry.place, context);
    if (!fields.is_map())
        return std::nullopt;
    EdgeRule rule;
    rule.word = entry.key;
    rule.place = entry.place;
    rule.wrap = fields.ceil_um("tuck");
    rule.stop = fields.ceil_um("stop");
    rule.behind = fields.name("behind").value_or("");
    if (fields.has("tuck") && fields.has("stop"))
        context.fault(entry.place,
                      "edge " + quoted(entry.key) + " has both " +
                          quoted(fields.entry("tuck")->key) + " and 'stop'",
                      "film is turned around an edge or ends short of it; keep one of the two");
    if (!fields.has("tuck") && !fields.has("stop") && !fields.has("behind") &&
        !context.told_since(mark))
        context.fault(entry.place, "edge " + quoted(entry.key) + " says nothing",
                      "give 'tuck', 'stop' or 'behind'");
    if (const Entry* behind = fields.entry("behind"))
        check_reference(rule.behind, "behind", behind->value.place, hardware, context);
    return rule;
}

} // namespace

void read_edges(const Fields& fields, const Names& hardware, Panel& panel, Context& context) {
    const Entry* edges = fields.entry("edges");
    if (edges == nullptr)
        return;
    if (edges->value.kind == Node::Kind::scalar && edges->value.text == "none") {
        panel.edges_none = true;
        return;
    }
    if (edges->value.kind == Node::Kind::scalar && begins_like_a_length(edges->value.text)) {
        const Entry all{"all", edges->place, edges->value};
        if (auto rule = tuck_alone(all, context))
            panel.edges.push_back(std::move(*rule));
        return;
    }
    const std::vector<Entry>* entries = fields.named("edges");
    if (entries == nullptr)
        return;
    const EdgeWords words(panel);
    for (const Entry& entry : *entries) {
        auto rule = rule_of(entry, hardware, context);
        const std::string word = words.in_the_drawing(entry.key);
        words.check(word, entry.place, context);
        if (!rule)
            continue;
        rule->word = word;
        panel.edges.push_back(std::move(*rule));
    }
}

} // namespace pelt::read
