// SPDX-License-Identifier: MIT
#include "report/draw/range_bar.hpp"
#include "report/draw/svg.hpp"
#include "report/estimate.hpp"
#include "report/facts.hpp"
#include "report/paper/canvas.hpp"
#include "report/paper/flow.hpp"
#include "report/paper/pages.hpp"
#include "report/words.hpp"

#include <algorithm>

namespace pelt::report {
namespace {

constexpr double type = 3.2;
constexpr double svg_width = 1'600;
constexpr double svg_type = 40;
constexpr double svg_margin = 60;
constexpr double lines_to_paper = 12;

std::string title_of(const EstimateSheet& sheet) {
    return "Estimate, not measured: " + vehicles_of(*sheet.estimate.as_scaled);
}

/// Lines of words under one another, then the bar.
class SvgPage {
public:
    explicit SvgPage(const EstimateSheet& sheet) : sheet_(sheet), measures_(sheet.unit) {}

    std::string written() {
        const Job& job = *sheet_.estimate.as_scaled;
        line(vehicles_of(job), draw::Face::bold);
        line(std::string(not_measured) + (is_demonstration(job) ? " · DEMONSTRATION" : ""),
             draw::Face::bold);
        line("Film: " + job.film.name + " · " + by_text(job.by), draw::Face::plain);
        line(what_to_price_by(sheet_.estimate, measures_) + "; measure before you buy",
             draw::Face::bold);
        const draw::Picture bar =
            draw::range_bar(sheet_.estimate, svg_width, svg_type, measures_, letters_);
        draw::put(page_, bar, svg_margin, y_);
        page_.width = std::max(page_.width, svg_width + 2 * svg_margin);
        page_.height = y_ + bar.height + svg_margin;
        return draw::svg_file(title_of(sheet_), draw::svg_style(lines_to_paper), page_);
    }

private:
    void line(const std::string& text, draw::Face face) {
        page_.marks.push_back(
            draw::Text{text, {svg_margin, y_ + svg_type}, svg_type, draw::Anchor::start, face});
        page_.width = std::max(page_.width,
                               2 * svg_margin + letters_.width(text, svg_type, face));
        y_ += svg_type * 1.6;
    }

    const EstimateSheet& sheet_;
    Measures measures_;
    draw::UnknownLetters letters_;
    draw::Picture page_;
    double y_ = svg_margin / 2;
};

} // namespace

std::string to_svg(const EstimateSheet& sheet) {
    return SvgPage(sheet).written();
}

std::string to_pdf(const EstimateSheet& sheet, Paper size) {
    const paper::PaperLetters letters;
    const Measures measures(sheet.unit);
    const Job& job = *sheet.estimate.as_scaled;
    paper::Flow flow(paper::size_of(size), type, letters);
    flow.add(estimate_page(sheet));
    flow.space(type * 2);
    flow.add(draw::range_bar(sheet.estimate, flow.width(), type, measures, letters));
    std::vector<draw::Picture> pages = std::move(flow).pages();
    const std::string code = check_code_of(job);
    paper::add_feet(pages,
                    std::string(not_measured) + (is_demonstration(job) ? " · DEMONSTRATION" : "") +
                        (code.empty() ? "" : " · check code " + code) + " · " + vehicles_of(job) +
                        " · " + job.film.name,
                    letters);
    return paper::to_pdf(pages, title_of(sheet));
}

} // namespace pelt::report
