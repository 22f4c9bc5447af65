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
                const std::string& cautions_at, const draw::Letters& letters) {
    const Document document = first_page_of(sheet, cautions_at);
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

namespace {

/// What stands before the pages of strips.
struct Front {
    std::vector<draw::Picture> pages;
    bool how_to_read = false;    ///< the strips is told there
    std::size_t cautions_at = 0; ///< the page of figures and cautions; 0: none, they come last
};

class FrontSetter {
public:
    FrontSetter(const Sheet& sheet, PageSize size, const std::vector<PlacedPiece>& pieces,
                const std::vector<Strip>& strips, const draw::Letters& letters)
        : sheet_(sheet), size_(size), pieces_(pieces), strips_(strips), letters_(letters) {}

    /// The roll and the list of pieces; below the list whatever else there is room for.
    Front set(const std::string& cautions_at) const {
        Front out;
        Flow flow = first_page(sheet_, size_, strips_, cautions_at, letters_);
        add_overview(flow, sheet_, pieces_, strips_, Measures(sheet_.unit), letters_);
        const Document list = list_of_pieces(sheet_);
        if (!has_room(flow, list))
            flow.new_page();
        flow.add(list);
        const Document how_to_read = how_to_read_strips(sheet_);
        out.how_to_read = has_room(flow, how_to_read);
        if (out.how_to_read)
            flow.add(how_to_read);
        const Document last = last_page_of(sheet_);
        if (out.how_to_read && has_room(flow, last)) {
            flow.add(last);
            out.cautions_at = flow.page_count();
        }
        out.pages = std::move(flow).pages();
        return out;
    }

private:
    bool has_room(const Flow& flow, const Document& document) const {
        return height_of(document, size_, letters_) <= flow.room();
    }

    const Sheet& sheet_;
    PageSize size_;
    const std::vector<PlacedPiece>& pieces_;
    const std::vector<Strip>& strips_;
    const draw::Letters& letters_;
};

} // namespace

std::vector<draw::Picture> sheet_pages(const Sheet& sheet, Paper paper,
                                       const draw::Letters& letters) {
    const PageSize size = size_of(paper);
    const Measures measures(sheet.unit);
    const std::vector<PlacedPiece> pieces = pieces_by_number(sheet.plan);
    const std::vector<Strip> strips = strips_of(sheet.plan, pieces);
    const FrontSetter setter(sheet, size, pieces, strips, letters);
    Front front = setter.set("last page");
    if (front.cautions_at > 0) // a shorter word, so the page stays the same
        front = setter.set("page " + std::to_string(front.cautions_at));
    std::vector<draw::Picture> pages = std::move(front.pages);
    for (draw::Picture& page : strip_pages(sheet, pieces, strips, size, measures, letters))
        pages.push_back(std::move(page));
    if (front.cautions_at == 0) {
        Flow last(size, plain_type, letters);
        if (!front.how_to_read)
            last.add(how_to_read_strips(sheet));
        last.add(last_page_of(sheet));
        for (draw::Picture& page : std::move(last).pages())
            pages.push_back(std::move(page));
    }
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
