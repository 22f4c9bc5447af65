// SPDX-License-Identifier: MIT
#include "model/jobs.hpp"

#include "model/error.hpp"
#include "read/document.hpp"
#include "read/documents.hpp"
#include "read/fields.hpp"
#include "read/quantities.hpp"
#include "read/read.hpp"
#include "read/table/jobs_table.hpp"
#include "read/times.hpp"

#include <array>
#include <map>
#include <utility>

namespace pelt::read {
namespace {

constexpr std::size_t most_jobs = 100'000;

const Key& key_of(std::string_view name) {
    const Key* key = find_key(In::job, name);
    if (key == nullptr)
        throw ProgramError("the table of keys has no '" + std::string(name) + "'");
    return *key;
}

void read_films(const Fields& fields, QuoteJob& job, Context& context) {
    const bool several = fields.has("films");
    if (fields.has("film") == several) {
        const Entry* twice = fields.entry("films");
        if (several)
            context.fault(twice->place, "the job has both 'film' and 'films'",
                          "keep 'films', each with its panels");
        else if (!fields.mentions("film") && !fields.mentions("films"))
            context.fault(fields.owner(), fields.label() + " has no 'film'", "add 'film: NAME'");
        return;
    }
    if (!several) {
        job.films.push_back({fields.text("film").value_or(""), fields.names("only")});
        return;
    }
    if (const Entry* only = fields.entry("only"))
        context.fault(only->place, "the job has both 'only' and 'films'",
                      "name the panels of each film under its own 'only'");
    if (const std::vector<Node>* items = fields.list("films"))
        for (const Node& item : *items) {
            const Fields film(item, In::film_of_job, "an entry of 'films'", item.place, context);
            job.films.push_back({film.text("film").value_or(""), film.names("only")});
        }
}

/// Three lengths between commas, or as a list; empty where there are none, or they are wrong.
std::string read_like_size(const Fields& fields, Context& context) {
    const Entry* entry = fields.entry("like size");
    if (entry == nullptr)
        return {};
    std::string all;
    for (const Node& item : entry->value.items)
        all += (all.empty() ? "" : ",") + item.text;
    if (entry->value.kind != Node::Kind::list)
        all = fields.text("like size").value_or("");
    std::size_t lengths = 0;
    std::string_view rest = all;
    for (bool more = !rest.empty(); more; ++lengths) {
        const std::size_t comma = rest.find(',');
        const auto parsed = parse_length(rest.substr(0, comma), Unit::mm);
        if (!parsed.value) {
            context.fault(entry->place, "like size " + parsed.refusal.what, parsed.refusal.remedy);
            return {};
        }
        more = comma != std::string_view::npos;
        rest.remove_prefix(more ? comma + 1 : rest.size());
    }
    constexpr std::size_t wanted = 3;
    if (!all.empty() && lengths != wanted)
        context.fault(entry->place, "like size " + quoted(all) + " is not three lengths",
                      "write length, width and height over all, such as 4710,1830,1480");
    return all;
}

/// "25", or {want: 25, least: 10}.
std::optional<MarginWish> read_margin(const Fields& fields, Context& context) {
    const Entry* entry = fields.entry("margin");
    if (entry == nullptr)
        return std::nullopt;
    if (entry->value.kind == Node::Kind::scalar) {
        const auto want = fields.ceil_um("margin");
        return want ? std::optional(MarginWish{*want, std::nullopt}) : std::nullopt;
    }
    const auto map = fields.map("margin");
    const auto want = map ? map->ceil_um("want") : std::nullopt;
    if (!want)
        return std::nullopt;
    const MarginWish wish{*want, map->ceil_um("least")};
    if (wish.least.value_or(0) > wish.want)
        context.fault(entry->place, "the least margin is more than what is wanted",
                      "give 'least' the smaller figure");
    return wish;
}

void read_wishes(const Fields& fields, QuoteJob& job, Context& context) {
    job.by = fields.choice("by").value_or(0) == 0 ? CutBy::straight : CutBy::contour;
    read_films(fields, job, context);
    job.without = fields.names("without");
    job.with = fields.names("with");
    job.leave = fields.names("leave");
    job.times = fields.count("times").value_or(1);
    constexpr std::array<Seams, 4> in_table{Seams::fitter, Seams::thrifty, Seams::never,
                                            Seams::fitter};
    job.seams = in_table[fields.choice("seams").value_or(0)];
    job.margin = read_margin(fields, context);
    if (const auto width = fields.length("width"))
        job.width = width->length.floor_um();
    job.stock = fields.text("stock").value_or("");
    job.sure_percent = fields.percent("sure");
    job.tolerance = fields.ceil_um("tolerance").value_or(0);
    job.like_size = read_like_size(fields, context);
    job.start = day_of(fields, key_of("start"), context);
    job.film_arrives = day_of(fields, key_of("film arrives"), context);
}

void read_page(const Fields& fields, QuoteJob& job) {
    ForCustomer& page = job.for_customer;
    for (const auto& [key, text] : {std::pair("customer", &page.customer),
                                    {"phone", &page.phone},
                                    {"plate", &page.plate},
                                    {"color", &page.color},
                                    {"quote number", &page.quote_number},
                                    {"notes", &page.notes}})
        *text = fields.text(key).value_or("");
    for (const std::string& name : fields.names("old film"))
        if (name == "all")
            job.old_film_everywhere = true;
        else
            job.old_film.push_back(name);
    job.condition = fields.names("condition");
}

ReadJob read_job(const Node& node, std::size_t number) {
    ReadJob out;
    Context context;
    const std::string label = "job " + std::to_string(number);
    const Fields fields(node, In::job, label, node.place, context);
    if (fields.is_map()) {
        QuoteJob job;
        job.place = node.place;
        job.name = fields.text("job").value_or("");
        out.name = job.name;
        job.vehicle = fields.text("vehicle").value_or("");
        read_wishes(fields, job, context);
        read_page(fields, job);
        if (context.mark() == 0)
            out.job = std::move(job);
    }
    if (out.name.empty())
        out.name = label;
    std::size_t unlisted = 0;
    std::move(context).finish(out.faults, unlisted);
    return out;
}

/// "line 4", of a table "A4".
std::string spoken(const Place& place) {
    return place.source && place.source->is_table ? cell_name(place.line, place.column)
                                                  : "line " + std::to_string(place.line);
}

/// Rows are told apart by their names.
void tell_repeated_names(Jobs& jobs) {
    std::map<std::string, Place> places;
    for (ReadJob& read : jobs.jobs) {
        if (!read.job)
            continue;
        const auto [first, is_new] = places.emplace(read.name, read.job->place);
        if (is_new)
            continue;
        read.faults.push_back(
            {Severity::file, read.job->place, "",
             "another job is called " + quoted(read.name) + " too",
             "the other is in " + spoken(first->second) + "; give one of them another name"});
        read.job.reset();
    }
}

/// The jobs of one list, or the one job that the document is.
void add_jobs(const Node& root, Jobs& jobs, Context& context) {
    if (root.kind == Node::Kind::map && root.entry("jobs") == nullptr &&
        root.entry("job") != nullptr) {
        jobs.jobs.push_back(read_job(root, jobs.jobs.size() + 1));
        return;
    }
    const Fields fields(root, In::jobs, "the file", root.place, context);
    const Entry* entry = fields.is_map() ? fields.entry("jobs") : nullptr;
    jobs.demonstration = fields.is_map() && fields.yes_no("demonstration").value_or(false);
    if (entry == nullptr)
        return;
    if (entry->value.kind != Node::Kind::list || entry->value.items.empty()) {
        fields.list("jobs"); // tells what it is instead
        return;
    }
    if (entry->value.items.size() > most_jobs) {
        context.fault(entry->place, "'jobs' has more than 100,000 entries",
                      "make several files of it");
        return;
    }
    for (const Node& item : entry->value.items)
        jobs.jobs.push_back(read_job(item, jobs.jobs.size() + 1));
}

void add_documents(const std::shared_ptr<const Source>& source, Jobs& jobs, Context& context) {
    for (const Document& document : documents_of(source)) {
        context.add(document.faults);
        if (document.root && document.root->kind != Node::Kind::empty)
            add_jobs(*document.root, jobs, context);
        else if (document.root && jobs.jobs.empty())
            context.fault(document.root->place, "the file is empty",
                          "begin it with 'jobs:', and give a job a dash");
        if (document.faults.size() > most_jobs)
            break;
    }
}

/// What a table cannot say of a job is told with that job.
void add_rows(const std::shared_ptr<const Source>& source, Jobs& jobs, Context& context) {
    JobsTable table = jobs_table(source, context);
    jobs.demonstration = table.demonstration;
    for (JobRow& row : table.rows) {
        ReadJob read = read_job(row.job, jobs.jobs.size() + 1);
        if (!row.faults.empty())
            read.job.reset();
        read.faults.insert(read.faults.begin(), row.faults.begin(), row.faults.end());
        jobs.jobs.push_back(std::move(read));
    }
}

} // namespace

Reading<Jobs> jobs(std::shared_ptr<const Source> source) {
    Reading<Jobs> out;
    Context context;
    Jobs jobs;
    jobs.file = source->name;
    if (source->is_table)
        add_rows(source, jobs, context);
    else
        add_documents(source, jobs, context);
    tell_repeated_names(jobs);
    if (context.mark() == 0)
        out.value = std::move(jobs);
    std::move(context).finish(out.faults, out.unlisted);
    return out;
}

} // namespace pelt::read
