// SPDX-License-Identifier: MIT
#include "report/measured.hpp"

#include "report/draw/svg.hpp"
#include "report/measured_panel.hpp"
#include "report/page_head.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pelt::report {
namespace {

constexpr double margin = 60; ///< mm
constexpr double least_row = 4'000;
constexpr double page_shape = 1.4; ///< about so much wider than high, where there are many panels
constexpr double title_size = 60;
constexpr double line_scale = 12; ///< lines for panels of a metre, not for a page

/// Pictures side by side in rows, from the upper left on.
class Rows {
public:
    explicit Rows(double width) : row_width_(width) {}

    void add(const draw::Picture& picture) {
        if (x_ > margin && x_ + picture.width > row_width_)
            new_row();
        draw::put(page_, picture, x_, y_);
        x_ += picture.width + margin;
        height_ = std::max(height_, picture.height);
        page_.width = std::max(page_.width, x_);
    }
    void line(const std::string& text) {
        new_row();
        page_.marks.push_back(draw::Text{text,
                                         {margin, y_ + title_size / 2},
                                         title_size,
                                         draw::Anchor::start,
                                         draw::Face::bold});
        const draw::UnknownLetters letters;
        page_.width =
            std::max(page_.width, 2 * margin + letters.width(text, title_size, draw::Face::bold));
        y_ += title_size + margin;
    }
    draw::Picture page() {
        new_row();
        page_.height = y_;
        return std::move(page_);
    }

private:
    void new_row() {
        if (height_ > 0)
            y_ += height_ + margin;
        x_ = margin;
        height_ = 0;
    }

    double row_width_;
    draw::Picture page_;
    double x_ = margin;
    double y_ = margin;
    double height_ = 0;
};

} // namespace

std::string measured_svg(const std::vector<Vehicle>& vehicles, Unit unit) {
    const Measures measures(unit);
    std::vector<std::vector<draw::Picture>> panels;
    double area = 0;
    for (const Vehicle& vehicle : vehicles) {
        std::vector<draw::Picture>& own = panels.emplace_back();
        for (const Panel& panel : vehicle.panels) {
            own.push_back(measured_panel(panel, measures));
            area += (own.back().width + margin) * (own.back().height + margin);
        }
    }
    Rows rows(std::max(least_row, std::sqrt(area * page_shape)));
    std::string title;
    for (std::size_t v = 0; v < vehicles.size(); ++v) {
        const Vehicle& vehicle = vehicles[v];
        const std::string name =
            vehicle.name + (vehicle.demonstration ? std::string(" · ") + invented_data : "");
        title += (title.empty() ? "" : " + ") + name;
        rows.line(name + " · as measured, in " + measures.size_unit_in_words());
        for (const draw::Picture& panel : panels[v])
            rows.add(panel);
    }
    return draw::svg_file(title, draw::svg_style(line_scale), rows.page());
}

} // namespace pelt::report
