// SPDX-License-Identifier: MIT
#include "report/paper/form_rows.hpp"

#include "report/decimal.hpp"
#include "report/measured_outline.hpp"
#include "report/paper/form_boxes.hpp"
#include "report/paper/form_sketch.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>
#include <vector>

namespace pelt::report::paper {
namespace {

using Words = std::vector<std::string>;

/// A table to write in: heads, and how wide each column is beside the others.
struct Columns {
    Words heads;
    std::vector<double> shares;
};

const Columns& panel_columns() {
    static const Columns columns{{"panel", "sides, count", "width", "height", "measured",
                                  "rise: width", "height", "forward", "tuck", "top", "bottom",
                                  "left", "right"},
                                 {5, 4, 3, 3, 4.2, 3, 2.6, 2.8, 1.9, 1.9, 2.3, 1.9, 1.9}};
    return columns;
}

const Columns& part_columns() {
    static const Columns columns{{"part to take off", "count", "tool", "minutes", "clips", "after"},
                                 {5, 1.5, 4, 2, 1.5, 5}};
    return columns;
}

draw::Picture row_of(const Columns& columns, const Words& words, bool head, double width,
                     const draw::Letters& letters) {
    std::vector<Cell> cells;
    for (std::size_t i = 0; i < columns.shares.size(); ++i)
        cells.push_back({i < words.size() ? words[i] : "", columns.shares[i]});
    return boxes(cells, width, head ? head_row_height : row_height, head, letters);
}

/// The head again on every page.
void add_rows(Flow& flow, const Columns& columns, const std::vector<Words>& rows,
              const draw::Letters& letters) {
    const draw::Picture head = row_of(columns, columns.heads, true, flow.width(), letters);
    if (flow.room() < head.height + row_height)
        flow.new_page();
    flow.add(head);
    for (const Words& row : rows) {
        if (flow.room() < row_height) {
            flow.new_page();
            flow.add(head);
        }
        flow.add(row_of(columns, row, false, flow.width(), letters));
    }
}

std::string straight_or_over(const Panel* panel) {
    if (panel == nullptr)
        return "straight / over";
    const bool over = std::holds_alternative<GirthsForm>(panel->form) ||
                      (panel->crown && panel->crown->measured_over);
    return over ? "over" : "straight";
}

std::string tuck_at(const Panel& panel, std::string_view word, std::string_view of_girths,
                    const Measures& measures) {
    std::string out = panel.edges_none && word == "all" ? "0" : "";
    for (const EdgeRule& rule : panel.edges)
        if (rule.wrap && (rule.word == word || rule.word == of_girths))
            out = measures.size(*rule.wrap);
    return out;
}

class KnownRow {
public:
    KnownRow(const Panel& panel, const Measures& measures) : panel_(panel), measures_(measures) {}

    Words words() const {
        const MeasuredOutline outline = measured_outline(panel_);
        const bool taped = !outline.points.empty();
        const Crown crown = panel_.crown.value_or(Crown{});
        return {panel_.name,
                count_text(panel_),
                taped ? size(outline.width()) : "",
                taped ? size(outline.height()) : "",
                straight_or_over(&panel_),
                rise(crown.wide_mm),
                rise(crown.high_mm),
                panel_.forward ? std::string(name_of(*panel_.forward)) : "",
                tuck_at(panel_, "all", "all", measures_),
                tuck_at(panel_, "top", "top", measures_),
                tuck_at(panel_, "bottom", "bottom", measures_),
                tuck_at(panel_, "left", "start", measures_),
                tuck_at(panel_, "right", "end", measures_)};
    }

private:
    /// To the nearest step, as a tape is read.
    std::string size(double mm) const {
        const Um step = measures_.size_step();
        return measures_.size(std::llround(mm * um_per_mm / static_cast<double>(step)) * step);
    }
    std::string rise(double mm) const {
        if (!panel_.crown)
            return "";
        return (mm < 0 ? "-" : "") + size(std::abs(mm));
    }

    const Panel& panel_;
    const Measures& measures_;
};

std::vector<Words> part_rows(const Vehicle* vehicle) {
    constexpr std::size_t blank_rows = 4;
    constexpr std::size_t more_rows = 2;
    std::vector<Words> rows;
    if (vehicle != nullptr)
        for (const Hardware& part : vehicle->hardware) {
            std::string after;
            for (const std::string& name : part.after)
                after += (after.empty() ? "" : ", ") + name;
            rows.push_back({part.name, std::to_string(part.count), part.tool,
                            part.minutes_each
                                ? decimal(std::llround(*part.minutes_each * 10), 1, 0)
                                : "",
                            std::to_string(part.clips_each), after});
        }
    rows.resize(rows.size() + (rows.empty() ? blank_rows : more_rows));
    return rows;
}

} // namespace

void add_panel_rows(Flow& flow, const Vehicle* vehicle, double below, const Measures& measures,
                    const draw::Letters& letters) {
    std::vector<Words> rows;
    if (vehicle != nullptr) {
        for (const Panel& panel : vehicle->panels)
            rows.push_back(KnownRow(panel, measures).words());
    } else {
        Words blank(panel_columns().shares.size());
        blank[4] = straight_or_over(nullptr);
        const double left = flow.room() - head_row_height - below;
        rows.assign(static_cast<std::size_t>(std::max(1.0, left / row_height)), blank);
    }
    add_rows(flow, panel_columns(), rows, letters);
}

void add_part_rows(Flow& flow, const Vehicle* vehicle, const draw::Letters& letters) {
    add_rows(flow, part_columns(), part_rows(vehicle), letters);
}

double height_of_part_rows(const Vehicle* vehicle) {
    return head_row_height + row_height * static_cast<double>(part_rows(vehicle).size());
}

} // namespace pelt::report::paper
