// SPDX-License-Identifier: MIT
#include "report/assumptions.hpp"
#include "report/cautions.hpp"
#include "report/facts.hpp"
#include "report/figures.hpp"
#include "report/findings.hpp"
#include "report/legend.hpp"
#include "report/lists.hpp"
#include "report/offcuts.hpp"
#include "report/roll_sketch.hpp"
#include "report/seams_told.hpp"
#include "report/sections.hpp"
#include "report/words.hpp"

#include <algorithm>
#include <utility>

namespace pelt::report {
namespace {

constexpr const char* blank = "____________";

/// One text for findings that say the same of several panels.
std::vector<std::string> texts_of(const std::vector<Finding>& findings) {
    std::vector<std::pair<std::string, std::vector<std::string>>> grouped;
    for (const Finding& finding : findings) {
        const auto same = std::find_if(grouped.begin(), grouped.end(), [&](const auto& entry) {
            return entry.first == finding.text;
        });
        auto& entry = same == grouped.end()
                          ? grouped.emplace_back(finding.text, std::vector<std::string>{})
                          : *same;
        if (!finding.panel.empty())
            entry.second.push_back(finding.panel);
    }
    std::vector<std::string> texts;
    for (const auto& [text, panels] : grouped)
        texts.push_back(panels.empty() ? text : listed(panels) + ": " + text);
    return texts;
}

std::string panels_with_added_seams(const Job& job) {
    std::vector<std::string> panels;
    for (const Seam& seam : job.seams) {
        const std::string panel = panel_label(job, seam.vehicle, seam.panel);
        if (seam.added && std::find(panels.begin(), panels.end(), panel) == panels.end())
            panels.push_back(panel);
    }
    return listed(panels);
}

class CutSheet {
public:
    explicit CutSheet(const Sheet& sheet)
        : sheet_(sheet), job_(sheet.plan.job()), measures_(sheet.unit) {}

    void first_page() {
        if (const std::string panels = panels_with_added_seams(job_); !panels.empty())
            add(Items{"!", {panels + ": seams added, see SEAMS"}});
        job_lines();
        order();
        add(Heading{"WHAT THIS ASSUMES"});
        add(Items{"-", assumptions(sheet_, measures_)});
        how_it_is_divided();
        decisions();
        film();
    }

    void laying() {
        add(Heading{"IN THE ORDER OF LAYING"});
        add(laying_table(sheet_, measures_));
        line(job_.by == CutBy::straight
                 ? "Cut at: from the free end / from the near edge, once its roll edge is off."
                 : "Cut at: from the free end / from the near edge of the roll.");
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

    void last_pages() {
        add(Heading{"PIECES BY NUMBER"});
        add(pieces_table(sheet_, measures_));
        line(stretch_note(sheet_));
        figures();
        offcuts();
        add(Heading{"CAUTIONS"});
        add(Items{"-", cautions(sheet_, measures_)});
    }

    Document written() { return std::move(document_); }

private:
    void add(Block block) { document_.push_back(std::move(block)); }
    void line(const std::string& text) { add(Line{text}); }

    void job_lines() {
        add(Title{vehicles_of(job_) +
                      (job_.times > 1 ? ", " + std::to_string(job_.times) + " times" : ""),
                  is_demonstration(job_) ? "DEMONSTRATION: INVENTED DATA" : ""});
        line("Film: " + job_.film.name +
             (job_.film.kind ? " (" + std::string(name_of(*job_.film.kind)) + ")" : "") + " · " +
             by_text(job_.by));
        const std::string code = check_code_of(sheet_);
        line("Files: " + (code.empty() ? std::string(blank) : code) + " · job: " + blank +
             " · colour: " + blank);
        const std::string batch = known_batch();
        line("Batch: " + (batch.empty() ? std::string(blank) : batch) + " · date: " +
             (sheet_.date.empty() ? std::string(blank) : sheet_.date) + " · measured by: " + blank);
        line("Cautions: see last page.");
    }

    /// Of all film that is used, where it is one and known.
    std::string known_batch() const {
        std::string batch;
        for (const UsedRoll& used : sheet_.plan.layout().rolls) {
            const std::string own = known_batch_of(job_.rolls.at(used.roll));
            if (own.empty() || (!batch.empty() && batch != own))
                return "";
            batch = own;
        }
        return batch;
    }

    void order() {
        add(Heading{"ORDER"});
        add(Big{what_to_order(sheet_, measures_)});
        add(Items{"-", about_the_order(sheet_, measures_)});
    }

    void decisions() {
        std::vector<std::string> texts = texts_of(other_findings(sheet_, measures_, true));
        for (const std::string& text : cautions_of_this_job(sheet_, measures_))
            texts.push_back(text);
        if (texts.empty())
            return;
        add(Heading{"DECIDE OR MIND BEFORE CUTTING"});
        add(Items{"!", texts});
    }

    void how_it_is_divided() {
        std::vector<std::string> texts = texts_of(added_seams(sheet_, measures_));
        for (const std::string& text : texts_of(divided_otherwise(sheet_, measures_)))
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
        add(Items{"-", how_the_film_lies(sheet_, measures_)});
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
    Document document_;
};

} // namespace

Document cut_sheet(const Sheet& sheet) {
    CutSheet whole(sheet);
    whole.first_page();
    whole.laying();
    whole.cuts();
    whole.last_pages();
    return whole.written();
}

Document first_page_of(const Sheet& sheet) {
    CutSheet part(sheet);
    part.first_page();
    return part.written();
}

Document after_the_cutting(const Sheet& sheet) {
    CutSheet part(sheet);
    part.laying();
    part.last_pages();
    return part.written();
}

std::string to_table(const Sheet& sheet, const TextStyle& style) {
    return to_text(cut_sheet(sheet), style);
}

std::string to_markdown(const Sheet& sheet) {
    return to_markdown(cut_sheet(sheet));
}

} // namespace pelt::report
