// SPDX-License-Identifier: MIT
#include "report/draw/roll.hpp"
#include "report/facts.hpp"
#include "report/figures.hpp"
#include "report/legend.hpp"
#include "report/paper/canvas.hpp"
#include "report/paper/flow.hpp"
#include "report/paper/overview.hpp"
#include "report/paper/pages.hpp"
#include "report/lists.hpp"
#include "report/paper/strip_lists.hpp"
#include "report/paper/strip_page.hpp"
#include "report/paper/type_sizes.hpp"
#include "report/sections.hpp"
#include "report/words.hpp"

#include <algorithm>

namespace pelt::report {
namespace paper {
namespace {

/// Sizes of plain words to try on page one, and scales that the whole roll should have there: good
/// ones, else what can still be read.
constexpr double first_page_types[] = {3.5, 3.35, plain_type};
constexpr double good_scale = 1.0 / 80;
constexpr double fair_scale = 1.0 / 110;
constexpr double poor_scale = 1.0 / 148;

std::string foot_of(const Sheet& sheet) {
    const Job& job = sheet.plan.job();
    const std::string code = check_code_of(sheet);
    // What matters stands first: a long name may be cut off.
    return std::string(is_demonstration(job) ? "DEMONSTRATION · " : "") +
           (code.empty() ? "" : "check code " + code + " · ") +
           (sheet.date.empty() ? "" : sheet.date + " · ") + vehicles_of(job) + " · " +
           job.film.name;
}

/// Page one, in the largest letters that leave room for the roll.
Flow first_page(const Sheet& sheet, PageSize size, const std::vector<Strip>& strips,
                const draw::Letters& letters) {
    const Document document = first_page_of(sheet);
    for (const double scale : {good_scale, fair_scale, poor_scale})
        for (const double type : first_page_types) {
            Flow flow(size, type, letters);
            flow.add(document);
            if (flow.page_count() == 1 && overview_scale(flow, sheet, strips, letters) >= scale)
                return flow;
        }
    Flow flow(size, plain_type, letters);
    flow.add(document);
    return flow;
}

/// Set on a page without an end.
double height_of(const Document& document, PageSize size, const draw::Letters& letters) {
    Flow flow({size.width, 1e6}, plain_type, letters);
    const double before = flow.room();
    flow.add(document);
    return before - flow.room();
}

/// What holds for all strip pages.
Document how_to_read_strips(const Sheet& sheet) {
    Document document{Heading{"HOW TO READ THE STRIP PAGES"}};
    std::vector<std::string> texts;
    if (sheet.plan.job().by == CutBy::straight)
        texts.push_back(how_to_tick_the_cuts());
    texts.push_back(what_to_write_on_the_backing());
    document.push_back(Items{"-", std::move(texts)});
    return document;
}

} // namespace

PageSize size_of(Paper paper) {
    return paper == Paper::a4 ? PageSize{210, 297} : PageSize{215.9, 279.4};
}

std::vector<draw::Picture> sheet_pages(const Sheet& sheet, Paper paper,
                                       const draw::Letters& letters) {
    const PageSize size = size_of(paper);
    const Measures measures(sheet.unit);
    const std::vector<PlacedPiece> pieces = pieces_by_number(sheet.plan);
    const std::vector<Strip> strips = strips_of(sheet.plan, pieces);
    Flow flow = first_page(sheet, size, strips, letters);
    add_overview(flow, sheet, pieces, strips, measures, letters);
    const Document list = list_of_pieces(sheet);
    if (height_of(list, size, letters) > flow.room())
        flow.new_page();
    flow.add(list);
    // What holds for all strip pages: before them where there is room, else on the last page.
    const Document how_to_read = how_to_read_strips(sheet);
    const bool before = height_of(how_to_read, size, letters) <= flow.room();
    if (before)
        flow.add(how_to_read);
    std::vector<draw::Picture> pages = std::move(flow).pages();
    for (draw::Picture& page : strip_pages(sheet, pieces, strips, size, measures, letters))
        pages.push_back(std::move(page));
    Flow last(size, plain_type, letters);
    if (!before)
        last.add(how_to_read);
    last.add(last_page_of(sheet));
    for (draw::Picture& page : std::move(last).pages())
        pages.push_back(std::move(page));
    add_feet(pages, foot_of(sheet), letters);
    return pages;
}

} // namespace paper

std::string to_pdf(const Sheet& sheet, Paper size) {
    const paper::PaperLetters letters;
    return paper::to_pdf(paper::sheet_pages(sheet, size, letters),
                         "Cut sheet: " + vehicles_of(sheet.plan.job()));
}

std::string what_paper_lacks() {
    return paper::has_font() ? ""
                             : std::string("the font ") + paper::font_family +
                                   " is not installed, and a PDF is set in it";
}

} // namespace pelt::report
