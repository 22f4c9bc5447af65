// SPDX-License-Identifier: MIT
#include "read/edges.hpp"

#include "read/edge_words.hpp"

#include <algorithm>

namespace pelt::read {
namespace {

std::optional<EdgeRule> rule_of(const Entry& entry, const Names& hardware, Context& context) {
    const std::size_t mark = context.mark();
    const Fields fields(entry.value, In::edge, "edge " + quoted(entry.key), entry.place, context);
    if (!fields.is_map())
        return std::nullopt;
    EdgeRule rule;
    rule.word = entry.key;
    rule.place = entry.place;
    rule.wrap = fields.ceil_um("wrap");
    rule.stop = fields.ceil_um("stop");
    rule.behind = fields.name("behind").value_or("");
    if (fields.has("wrap") && fields.has("stop"))
        context.fault(entry.place, "edge " + quoted(entry.key) + " has both 'wrap' and 'stop'",
                      "film is turned around an edge or ends short of it; keep one of the two");
    if (!fields.has("wrap") && !fields.has("stop") && !fields.has("behind") &&
        !context.told_since(mark))
        context.fault(entry.place, "edge " + quoted(entry.key) + " says nothing",
                      "give 'wrap', 'stop' or 'behind'");
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
    const std::vector<Entry>* entries = fields.named("edges");
    if (entries == nullptr)
        return;
    const EdgeWords words(panel);
    for (const Entry& entry : *entries) {
        if (auto rule = rule_of(entry, hardware, context))
            panel.edges.push_back(std::move(*rule));
        words.check(entry.key, entry.place, context);
    }
}

} // namespace pelt::read
