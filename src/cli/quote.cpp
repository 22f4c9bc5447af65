// SPDX-License-Identifier: MIT
#include "cli/context.hpp"
#include "cli/files.hpp"
#include "cli/formats.hpp"
#include "cli/output.hpp"
#include "cli/quote_job.hpp"
#include "cli/request.hpp"
#include "cli/statuses.hpp"
#include "model/error.hpp"
#include "model/parallel.hpp"

#include <algorithm>
#include <cstdio>

namespace pelt::cli {
namespace {

bool is_by_rows(Format format) {
    return format == Format::json || format == Format::csv;
}

/// Rows of one target, collected or, on standard output, printed as they come.
class Rows {
public:
    explicit Rows(const std::vector<Target>& targets) : targets_(targets), texts_(targets.size()) {
        for (std::size_t i = 0; i < targets.size(); ++i)
            if (targets[i].format == Format::csv)
                add(i, report::quote_csv_head());
    }

    void add(const report::QuoteRow& row) {
        for (std::size_t i = 0; i < targets_.size(); ++i)
            if (targets_[i].format == Format::csv)
                add(i, report::to_csv_row(row));
            else if (targets_[i].format == Format::json)
                add(i, report::to_json_line(row));
    }
    /// What is still to be written of a target that is made of rows.
    std::string rest_of(const Target& target) const {
        for (std::size_t i = 0; i < targets_.size(); ++i)
            if (&targets_[i] == &target)
                return texts_[i];
        return {};
    }

private:
    /// What the stream refuses is told when it is closed.
    void add(std::size_t target, const std::string& text) {
        if (targets_[target].is_standard_output()) {
            const std::string bytes = as_wanted(text, targets_[target]);
            std::fwrite(bytes.data(), 1, bytes.size(), stdout);
            std::fflush(stdout);
        } else {
            texts_[target] += text;
        }
    }

    const std::vector<Target>& targets_;
    std::vector<std::string> texts_;
};

class QuoteCommand {
public:
    explicit QuoteCommand(const Context& context) : context_(context), files_(context) {}

    int run() {
        Faults faults;
        targets_ = targets_of(context_.arguments, faults);
        for (const Fault& fault : faults_of_paper(targets_, context_.world))
            faults.push_back(fault);
        files_.tell(faults);
        if (stops(faults) || !read())
            return files_.status();
        needs_all_ = std::any_of(targets_.begin(), targets_.end(),
                                 [](const Target& t) { return !is_by_rows(t.format); });
        JobFiles named(context_.world, jobs_.file);
        files_.note(named.wanted_by(jobs_));
        if (!files_.spared_by(paths_of(targets_)))
            return files_.status();
        Rows rows(targets_);
        plan_all(rows, named);
        files_.note(named.inputs()); // scans too, which only vehicle files name
        if (!files_.spared_by(paths_of(targets_)))
            return files_.status();
        const int written = write_results(
            targets_, [&](const Target& target) { return rendered(target, rows); },
            context_.messages);
        return written == status::done ? worst_ : written;
    }

private:
    bool read() {
        std::optional<ShopAsked> shop;
        if (!read_shop(files_, context_.arguments, shop))
            return false;
        if (shop)
            shop_ = *std::move(shop);
        else if (const auto start = context_.arguments.value(Opt::start))
            shop_.start = day_in(*start);
        const std::string& operand = context_.arguments.operands.front();
        const auto text = files_.value_of(read::load(operand), operand);
        auto jobs = text ? files_.value_of(read::jobs(*text), operand) : std::nullopt;
        if (!jobs)
            return false;
        jobs_ = *std::move(jobs);
        return true;
    }

    /// So many jobs at once as there are threads, each planned by one; rows in the file's order.
    void plan_all(Rows& rows, JobFiles& files) {
        const order::Request wishes = wishes_of(context_.arguments);
        const int threads = wishes.effort.threads;
        QuoteRun run{shop_, wishes.effort, jobs_.demonstration};
        run.effort.threads = 1;
        constexpr std::size_t jobs_a_thread = 8;
        const std::size_t at_once = jobs_a_thread * static_cast<std::size_t>(threads);
        for (std::size_t first = 0; first < jobs_.jobs.size(); first += at_once) {
            std::vector<report::QuoteRow> some(std::min(at_once, jobs_.jobs.size() - first));
            run_all(some.size(), threads,
                    [&](std::size_t i) { some[i] = quoted(jobs_.jobs[first + i], files, run); });
            for (report::QuoteRow& row : some) {
                worst_ = std::max(worst_, row.status);
                rows.add(row);
                if (needs_all_)
                    all_.push_back(std::move(row));
            }
        }
    }

    std::string rendered(const Target& target, const Rows& rows) const {
        if (is_by_rows(target.format))
            return rows.rest_of(target);
        const Unit unit = unit_of(context_.arguments);
        const bool inside = context_.arguments.count(Opt::inside) > 0;
        const std::string date = context_.arguments.value(Opt::date).value_or("");
        switch (target.format) {
        case Format::table:
            return report::to_text(document(inside, unit), style_for(target, context_));
        case Format::markdown:
            return report::to_markdown(document(inside, unit));
        case Format::pdf:
            return report::to_pdf(all_, shop_.shop, {inside, unit, date},
                                  paper_of(context_.arguments));
        default:
            break;
        }
        throw ProgramError("no quotes are made as " + std::string(name_of(target.format)));
    }

    report::Document document(bool inside, Unit unit) const {
        if (!inside)
            return report::quotes_in_a_table(all_, unit);
        report::Document out;
        for (const report::QuoteRow& row : all_)
            for (report::Block& block : report::inside_page(row, unit))
                out.push_back(std::move(block));
        return out;
    }

    const Context& context_;
    Files files_;
    std::vector<Target> targets_;
    ShopAsked shop_;
    Jobs jobs_;
    std::vector<report::QuoteRow> all_; ///< where a format needs them together
    bool needs_all_ = true;
    int worst_ = status::done;
};

} // namespace

int run_quote(const Context& context) {
    return QuoteCommand(context).run();
}

} // namespace pelt::cli
