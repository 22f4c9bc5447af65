// SPDX-License-Identifier: MIT
#include "read/flat_ring.hpp"
#include "read/read.hpp"
#include "read/table/layout.hpp"
#include "read/table/table_of.hpp"
#include "trade/names.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <optional>

namespace pelt::read {
namespace {

using RowOf = std::map<std::string_view, std::string>;

std::string word_of(Sides sides) {
    switch (sides) {
    case Sides::left:
        return "left";
    case Sides::right:
        return "right";
    case Sides::both:
        return "both";
    case Sides::centre:
        break;
    }
    return "";
}

double mm(Um um) {
    return static_cast<double>(um) / static_cast<double>(um_per_mm);
}

/// "hood, roof": of what a table cannot hold.
class LeftOut {
public:
    void note(const std::string& what, const std::string& panel) {
        std::vector<std::string>& names = panels_[what];
        if (names.empty() || names.back() != panel)
            names.push_back(panel);
    }
    std::vector<std::string> told() const {
        std::vector<std::string> out;
        for (const auto& [what, panels] : panels_) {
            std::string names;
            for (const std::string& panel : panels)
                names += (names.empty() ? "" : ", ") + panel;
            out.push_back(what + ": " + names);
        }
        return out;
    }

private:
    std::map<std::string, std::vector<std::string>> panels_;
};

class PanelRow {
public:
    PanelRow(const Panel& panel, LeftOut& left_out) : panel_(panel), left_out_(left_out) {}

    RowOf made() {
        set_words();
        if (panel_.guessed)
            note("guesses: width, height and rises are to be measured");
        else
            set_readings();
        set_tucks();
        note_the_rest();
        return std::move(row_);
    }

private:
    void note(const std::string& what) { left_out_.note(what, panel_.name); }

    void set_readings() {
        if (const auto* outline = std::get_if<OutlineForm>(&panel_.form))
            set_outline(*outline);
        else if (const auto* girths = std::get_if<GirthsForm>(&panel_.form))
            set_girths(*girths);
        else
            note("scans, of which width, height and rises are to be measured");
        if (panel_.crown)
            set_crown(*panel_.crown);
    }

    void set_words() {
        row_["panel"] = panel_.name;
        row_["sides"] = word_of(panel_.sides);
        if (const int count = panel_.count * panel_.faces; count > 1)
            row_["count"] = std::to_string(count);
        if (panel_.forward)
            row_["forward"] = name_of(*panel_.forward);
        if (panel_.direction)
            row_["direction"] = name_of(*panel_.direction);
        row_["group"] = panel_.group;
        row_["extra"] = panel_.extra;
        if (panel_.redo_percent)
            row_["redo"] = table_number(*panel_.redo_percent) + " %";
        if (panel_.is && panel_.is != trade::named(panel_.name).is)
            row_["is"] = trade::word_of(*panel_.is);
    }

    void set_size(double width, double height) {
        row_["width"] = table_number(width);
        row_["height"] = table_number(height);
    }

    void set_outline(const OutlineForm& outline) {
        const auto flat = flat_ring(outline);
        if (!flat)
            return;
        const Box box = box_of(flat->ring);
        set_size(mm(box.along()), mm(box.across()));
        if (!outline.from_size)
            note("outlines, which become their width and height");
    }

    void set_girths(const GirthsForm& girths) {
        double up = 0;
        double down = 0;
        for (const GirthStation& station : girths.stations) {
            up = std::max(up, station.up_mm);
            down = std::max(down, station.down_mm);
        }
        set_size(girths.stations.back().at_mm - girths.stations.front().at_mm, up + down);
        row_["measured"] = "over";
        note("girths, which become their width and height");
    }

    void set_crown(const Crown& crown) {
        if (crown.measured_over)
            row_["measured"] = "over";
        if (crown.wide_mm != 0)
            row_["rise over width"] = table_number(crown.wide_mm);
        if (crown.high_mm != 0)
            row_["rise over height"] = table_number(crown.high_mm);
    }

    static std::string_view tuck_column(std::string_view word) {
        if (word == "start")
            return "tuck left";
        if (word == "end")
            return "tuck right";
        for (const Column& column : columns())
            if (column.of == ColumnOf::tuck && column.key == word)
                return column.heading;
        return {};
    }

    void set_tucks() {
        if (panel_.edges_none)
            row_["tuck"] = "0";
        for (const EdgeRule& rule : panel_.edges) {
            const std::string_view column = tuck_column(rule.word);
            if (column.empty() || !rule.wrap || !rule.behind.empty()) {
                note("edges by name or number, stops, and what edges meet");
                continue;
            }
            if (column == "tuck") // overrides those before it
                for (const Column& other : columns())
                    if (other.of == ColumnOf::tuck)
                        row_.erase(other.heading);
            row_[column] = table_number(mm(*rule.wrap));
        }
    }

    void note_the_rest() {
        if (!panel_.openings.empty())
            note("openings");
        if (!panel_.inlays.empty())
            note("inlays");
        if (!panel_.seam_lines.empty() || panel_.seam != SeamRule::anywhere)
            note("where seams may lie");
        if (!panel_.recesses.empty())
            note("recesses");
        const PanelAllowances& own = panel_.allowances;
        if (own.wrap || own.bleed || own.handling || own.overlap || own.flush || panel_.tolerance)
            note("allowances and tolerances");
        if (!panel_.keep_clear.empty())
            note("what must be kept clear");
        if (panel_.faces > 1)
            note("inner faces, which are counted as more of the panel");
    }

    const Panel& panel_;
    LeftOut& left_out_;
    RowOf row_;
};

std::string line_of(const RowOf& row) {
    std::vector<std::string> cells;
    for (const Column& column : columns()) {
        const auto cell = row.find(column.heading);
        cells.push_back(cell == row.end() ? "" : cell->second);
    }
    return table_line(cells);
}

std::string headings() {
    std::vector<std::string> cells;
    for (const Column& column : columns())
        cells.emplace_back(column.heading);
    return table_line(cells);
}

std::string overall_lines(const Overall& overall) {
    std::string out;
    for (const auto& [word, value] : {std::pair("overall length", overall.length_mm),
                                      {"overall width", overall.width_mm},
                                      {"overall height", overall.height_mm}})
        if (value)
            out += table_line({word, table_number(*value)});
    return out;
}

} // namespace

TableOfVehicle table_of(const Vehicle& vehicle) {
    LeftOut left_out;
    TableOfVehicle out;
    out.text = table_line({"vehicle", vehicle.name});
    if (vehicle.demonstration)
        out.text += table_line({"demonstration", "yes"});
    if (!vehicle.body.empty())
        out.text += table_line({"body", vehicle.body});
    out.text += table_line({"units", "mm"}) + overall_lines(vehicle.overall) + headings();
    for (const Panel& panel : vehicle.panels)
        out.text += line_of(PanelRow(panel, left_out).made());
    out.left_out = left_out.told();
    if (!vehicle.hardware.empty())
        out.left_out.emplace_back("parts to take off");
    return out;
}

std::string table_to_fill_in(const Vehicle* vehicle) {
    std::string out = table_line({"vehicle", vehicle != nullptr ? vehicle->name : ""}) +
                      table_line({"body", vehicle != nullptr ? vehicle->body : ""}) +
                      table_line({"units", "mm"}) + headings();
    if (vehicle == nullptr)
        return out;
    for (const Panel& panel : vehicle->panels) {
        LeftOut unheard;
        RowOf row = PanelRow(panel, unheard).made();
        for (const std::string_view reading : {"width", "height", "rise over width",
                                               "rise over height", "measured", "redo"})
            row.erase(reading);
        out += line_of(row);
    }
    return out;
}

} // namespace pelt::read
