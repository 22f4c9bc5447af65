// SPDX-License-Identifier: MIT
#include "report/assumptions.hpp"
#include "report/blanks.hpp"
#include "report/cautions.hpp"
#include "report/facts.hpp"
#include "report/figures.hpp"
#include "report/findings.hpp"
#include "report/legend.hpp"
#include "report/lists.hpp"
#include "report/offcuts.hpp"
#include "report/page_head.hpp"
#include "report/roll_sketch.hpp"
#include "report/seams_told.hpp"
#include "report/sections.hpp"
#include "report/words.hpp"
#include "report/work_told.hpp"

#include <algorithm>
#include <utility>

namespace pelt::report {
namespace {

class CutSheet {
public:
    explicit CutSheet(const Sheet& sheet, bool for_paper = false)
        : sheet_(sheet), job_(sheet.plan.job()), measures_(sheet.unit), for_paper_(for_paper) {}

    void first_page(const std::string& cautions_at = "last page") {
        job_lines(cautions_at);
        order();
        work();
        decisions();
        seams();
        add(Heading{"WHAT THIS ASSUMES"});
        add(Items{"-", assumptions(sheet_, measures_)});
        film();
    }

    void laying(Table table) {
        add(Heading{"IN THE ORDER OF LAYING"});
        add(std::move(table));
        line(job_.by == CutBy::straight
                 ? "Cut at: from the free end / from the near edge, once its roll edge is off."
                 : "Cut at: from the free end / from the near edge of the roll.");
        if (const std::string covered = covered_openings(sheet_); !covered.empty())
            line(covered);
    }

    void cuts() {
        if (job_.by != CutBy::straight)
            return;
        add(Heading{"CUTS, IN THE ORDER MADE"});
        for (std::size_t roll = 0; roll < sheet_.plan.layout().rolls.size(); ++roll) {
            if (sheet_.plan.layout().rolls.size() > 1)
                line("Roll " + roll_name(sheet_, roll) + ":");
            add(cuts_table(sheet_, roll, measures_));
        }
        line(how_to_set_the_ruler());
    }

    void list_in_full() {
        laying(laying_table_in_full(sheet_, measures_));
        line(stretch_note(sheet_));
    }

    void pieces() {
        add(Heading{"PIECES BY NUMBER"});
        add(pieces_table(sheet_, measures_));
        line(stretch_note(sheet_));
    }

    void last_page() {
        figures();
        offcuts();
        add(Heading{"CAUTIONS"});
        add(Items{"-", cautions(sheet_)});
    }

    Document written() { return std::move(document_); }

private:
    void add(Block block) { document_.push_back(std::move(block)); }
    void line(const std::string& text) { add(Line{text}); }

    void job_lines(const std::string& cautions_at) {
        document_ = page_head(vehicles_and_times(job_), false, is_demonstration(job_));
        line("Film: " + job_.film.name +
             (job_.film.kind ? " (" + std::string(name_of(*job_.film.kind)) + ")" : "") + " · " +
             by_text(job_.by));
        for (const std::string& text : lines_with_blanks(blanks_of(sheet_)))
            line(text);
        line("Cautions: see " + cautions_at + ".");
    }

    void order() {
        add(Heading{"ORDER"});
        add(Big{what_to_order(sheet_, measures_)});
        add(Items{"-", about_the_order(sheet_, measures_)});
    }

    /// By a shop's figures, where they were given.
    void work() {
        if (!sheet_.by_shop)
            return;
        add(Heading{"WORK"});
        if (!sheet_.quote) {
            line("Hours and days are not reckoned for work that is half done.");
            return;
        }
        std::vector<std::string> texts = work_in_brief(*sheet_.quote);
        for (const std::string& text : pace_by_the_log(*sheet_.quote))
            texts.push_back(text);
        add(Items{"-", texts});
    }

    void decisions() {
        std::vector<std::string> texts;
        for (const GatheredMark& mark : gathered(marks_of(sheet_, measures_)))
            texts.push_back(mark.sentence());
        if (texts.empty())
            return;
        add(Heading{"BEFORE YOU CUT"});
        add(Items{"!", texts});
    }

    void seams() {
        std::vector<std::string> texts = added_seams(sheet_, measures_);
        for (const std::string& text : divided_otherwise(sheet_, measures_))
            texts.push_back(text);
        if (texts.empty())
            return;
        add(Heading{"SEAMS"});
        add(Items{"-", texts});
        const std::vector<std::string> lines = seam_lines_to_copy(sheet_);
        if (lines.empty())
            return;
        line("To keep added seams whatever changes, copy them into the vehicle file, "
             "pelt-vehicle(5):");
        add(Items{"-", lines});
    }

    void film() {
        add(Heading{"THE FILM ON THE TABLE"});
        std::vector<std::string> texts = how_the_film_lies(sheet_, measures_);
        if (!for_paper_) // there the drawing below has them
            for (const std::string& cuts : cuts_across_the_roll(sheet_, measures_))
                texts.push_back(cuts);
        add(Items{"-", texts});
        for (std::size_t roll = 0; roll < sheet_.plan.layout().rolls.size(); ++roll)
            sketch(roll);
    }

    void sketch(std::size_t roll) {
        RollSketch drawn = sketch_of(sheet_, roll, measures_);
        if (sheet_.plan.layout().rolls.size() > 1)
            drawn.title = roll_title(sheet_, roll, measures_);
        add(std::move(drawn));
    }

    void offcuts() {
        std::vector<std::string> entries;
        for (const Offcut& offcut : offcuts_of(sheet_))
            entries.push_back(stock_entry(offcut, job_.film, measures_));
        if (entries.empty())
            return;
        add(Heading{"OFFCUTS WORTH KEEPING"});
        line("To be copied into the stock file, pelt-stock(5); write on each what it is, and its "
             "arrow.");
        add(Items{"-", entries});
    }

    void figures() {
        add(Heading{"FIGURES"});
        add(Items{"-", length_figures(sheet_, measures_)});
        add(area_table(sheet_, measures_));
    }

    const Sheet& sheet_;
    const Job& job_;
    Measures measures_;
    bool for_paper_;
    Document document_;
};

} // namespace

Document cut_sheet(const Sheet& sheet) {
    CutSheet whole(sheet);
    whole.first_page();
    whole.laying(laying_table(sheet, Measures(sheet.unit)));
    whole.cuts();
    whole.pieces();
    whole.last_page();
    return whole.written();
}

Document first_page_of(const Sheet& sheet, const std::string& cautions_at) {
    CutSheet part(sheet, true);
    part.first_page(cautions_at);
    return part.written();
}

Document list_of_pieces(const Sheet& sheet) {
    CutSheet part(sheet);
    part.list_in_full();
    return part.written();
}

Document last_page_of(const Sheet& sheet) {
    CutSheet part(sheet);
    part.last_page();
    return part.written();
}

std::string to_table(const Sheet& sheet, const TextStyle& style) {
    Document document = cut_sheet(sheet);
    if (style.on_a_terminal) // where the order has scrolled away
        document.push_back(
            Line{order_in_a_line(sheet, Measures(sheet.unit)) + " To cut by: -o sheet.pdf"});
    return to_text(document, style);
}

std::string to_markdown(const Sheet& sheet) {
    return to_markdown(cut_sheet(sheet));
}

} // namespace pelt::report
