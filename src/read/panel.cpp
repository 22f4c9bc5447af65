// SPDX-License-Identifier: MIT
#include "read/panel.hpp"

#include "read/file.hpp"
#include "read/outline.hpp"
#include "read/panel_form.hpp"
#include "read/shapes.hpp"

#include <string>
#include <utility>

namespace pelt::read {
namespace {

class PanelReader {
public:
    PanelReader(const Entry& entry, Context& context)
        : context_(context), fields_(entry.value, In::panel, "the panel", entry.place, context) {
        panel_.name = entry.key;
        panel_.place = entry.place;
    }

    Panel run() {
        const std::size_t mark = context_.mark();
        check_name(panel_.name, "the panel's name", panel_.place, context_);
        read_form(fields_, panel_, context_);
        read_places();
        read_words();
        read_edges();
        read_openings();
        read_seams();
        read_inlays();
        read_allowances();
        // Figures are only compared when each of them could be read.
        if (!context_.told_since(mark))
            check_shapes(panel_, context_);
        return std::move(panel_);
    }

private:
    void read_places() {
        if (const auto sides = fields_.choice("sides"))
            panel_.sides = static_cast<Sides>(*sides);
        if (const auto forward = fields_.choice("forward")) {
            constexpr Heading said[] = {Heading::right, Heading::left, Heading::up, Heading::down};
            panel_.forward = said[*forward];
        }
        if (const auto direction = fields_.choice("direction"))
            panel_.direction = static_cast<Direction>(*direction);
        panel_.faces = fields_.count("faces").value_or(1);
        panel_.count = fields_.count("count").value_or(1);
    }

    void read_words() {
        panel_.group = fields_.name("group").value_or("");
        panel_.extra = fields_.name("extra").value_or("");
        panel_.redo_percent = fields_.percent("redo");
        panel_.keep_clear = keep_clear(fields_);
        panel_.batch_free = fields_.yes_no("batch free").value_or(false);
        if (const auto seam = fields_.choice("seam"))
            panel_.seam = static_cast<SeamRule>(*seam);
    }

    std::string keep_clear(const Fields& fields) {
        const auto chosen = fields.choice("keep clear");
        return chosen ? std::string(choices_of(*find_key(In::panel, "keep clear"))[*chosen])
                      : std::string{};
    }

    void read_edges() {
        const Entry* entry = fields_.entry("edges");
        if (entry == nullptr)
            return;
        if (entry->value.kind == Node::Kind::scalar && entry->value.text == "none") {
            panel_.edges_none = true;
            return;
        }
        const std::vector<Entry>* rules = fields_.named("edges");
        if (rules == nullptr)
            return;
        for (const Entry& rule : *rules)
            read_edge(rule);
    }

    void read_edge(const Entry& entry) {
        const std::string label = "edge " + quoted(entry.key);
        if (entry.value.kind == Node::Kind::scalar &&
            parse_length(entry.value.text, Unit::mm).value) {
            context_.fault(entry.value.place, label + " is a bare length",
                           "write {wrap: " + entry.value.text + "} or {stop: " + entry.value.text +
                               "}");
            return;
        }
        const Fields fields(entry.value, In::edge, label, entry.place, context_);
        EdgeRule rule{entry.key, fields.ceil_um("wrap"), fields.ceil_um("stop"),
                      fields.name("behind").value_or(""), entry.place};
        if (fields.has("wrap") && fields.has("stop"))
            context_.fault(fields.entry("stop")->place, label + " has a wrap and a stop",
                           "film is either turned around an edge or ends short of it");
        panel_.edges.push_back(std::move(rule));
    }

    void read_openings() {
        const std::vector<Entry>* openings = fields_.named("openings");
        if (openings == nullptr)
            return;
        for (const Entry& entry : *openings) {
            check_name(entry.key, "the opening's name", entry.place, context_);
            const Fields fields(entry.value, In::opening, "opening " + quoted(entry.key),
                                entry.place, context_);
            Opening opening;
            opening.name = entry.key;
            opening.place = entry.place;
            if (const Entry* outline = fields.entry("outline"))
                if (auto form = read_outline(*outline, *find_key(In::opening, "outline"), context_))
                    opening.form = std::move(*form);
            opening.wrap = fields.ceil_um("wrap");
            opening.cut = fields.choice("cut") == std::size_t{1} ? OpeningCut::at_table
                                                                 : OpeningCut::on_vehicle;
            opening.behind = fields.name("behind").value_or("");
            opening.keep_clear = keep_clear(fields);
            panel_.openings.push_back(std::move(opening));
        }
    }

    void read_seams() {
        const std::vector<Node>* lines = fields_.list("seam lines");
        if (lines == nullptr)
            return;
        for (const Node& item : *lines) {
            const Fields fields(item, In::seam_line, "the seam line", item.place, context_);
            SeamLine seam;
            seam.place = item.place;
            seam.always = fields.choice("use") == std::size_t{0};
            if (const std::vector<Node>* points = fields.list("line"))
                for (const Node& point : *points)
                    if (const auto p =
                            point_value(point, *find_key(In::seam_line, "line"),
                                        "a point of the seam line", point.place, context_))
                        add_seam_point(seam, *p, point.place);
            if (seam.line.size() < 2 && fields.has("line"))
                context_.fault(item.place, "the seam line has fewer than two points",
                               "write it like [[600, 0], [600, 400]]");
            panel_.seam_lines.push_back(std::move(seam));
        }
    }

    void add_seam_point(SeamLine& seam, Point p, const Place& place) {
        if (!seam.line.empty() && on_grid(seam.line.back()) == on_grid(p))
            context_.fault(place, "two points of the seam line are the same",
                           "take one of them out");
        seam.line.push_back(p);
    }

    void read_inlays() {
        const std::vector<Entry>* inlays = fields_.named("inlays");
        if (inlays == nullptr)
            return;
        for (const Entry& entry : *inlays) {
            check_name(entry.key, "the inlay's name", entry.place, context_);
            const Fields fields(entry.value, In::inlay, "inlay " + quoted(entry.key), entry.place,
                                context_);
            const Point size = fields.point("size").value_or(Point{});
            panel_.inlays.push_back({entry.key, fields.point("at").value_or(Point{}), size.x,
                                     size.y, fields.ceil_um("overlap"), entry.place});
        }
    }

    void read_allowances() {
        const auto fields = fields_.map("allowances");
        if (!fields)
            return;
        panel_.allowances = {fields->ceil_um("wrap"), fields->ceil_um("bleed"),
                             read_handling(*fields, context_), fields->ceil_um("overlap"),
                             fields->ceil_um("flush")};
    }

    Context& context_;
    Fields fields_;
    Panel panel_;
};

} // namespace

Panel read_panel(const Entry& entry, Context& context) {
    context.panel = entry.key;
    Panel panel = PanelReader(entry, context).run();
    context.panel.clear();
    return panel;
}

} // namespace pelt::read
