// SPDX-License-Identifier: MIT
#include "trial.hpp"

#include "process.hpp"

#include <sys/resource.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <set>

namespace pelt::generated {
namespace {

double cpu_of_children() {
    rusage usage{};
    ::getrusage(RUSAGE_CHILDREN, &usage);
    const auto seconds = [](const timeval& t) {
        return static_cast<double>(t.tv_sec) + static_cast<double>(t.tv_usec) / 1e6;
    };
    return seconds(usage.ru_utime) + seconds(usage.ru_stime);
}

/// The program that was built, or another build of it.
std::string program() {
    const char* other = std::getenv("PELT_OTHER_PROGRAM"); // NOLINT(concurrency-mt-unsafe)
    return other == nullptr ? PELT_PROGRAM : other;
}

std::string contents_or_nothing(const std::string& path) {
    return std::filesystem::exists(path) ? support::contents_of(path) : "";
}

} // namespace

Outputs run(const Job& job, int most_seconds) {
    const support::ScratchFolder folder;
    for (const auto& [name, bytes] : job.files)
        folder.write(name, bytes);
    support::Run what;
    // A stack of its own kind is not needed, only an end to what runs away.
    what.words = {"/bin/sh", "-c",
                  "ulimit -t " + std::to_string(most_seconds) + "; exec \"$0\" \"$@\"", program()};
    what.words.insert(what.words.end(), job.words.begin(), job.words.end());
    for (const char* more : {"--threads", "1", "-o", "-", "-o", "out.csv", "-o", "out.json", "-o",
                             "out.md", "-o", "out.svg"})
        what.words.emplace_back(more);
    // In millimeters, as JSON is, whatever unit the film is measured in.
    if (std::find(job.words.begin(), job.words.end(), "--units") == job.words.end())
        what.words.insert(what.words.end(), {"--units", "mm"});
    what.folder = folder.path();
    what.environment = {{"LC_ALL", "C"}, {"TERM", "dumb"}, {"PATH", "/usr/bin:/bin"}};
    const double before = cpu_of_children();
    const support::Result result = support::run(what);
    Outputs out;
    out.cpu_seconds = cpu_of_children() - before;
    out.status = result.status;
    out.errors = result.errors;
    out.table = result.output;
    const auto written = [&](const char* name) {
        return contents_or_nothing(folder.path() + "/" + name);
    };
    out.csv = written("out.csv");
    out.json = written("out.json");
    out.markdown = written("out.md");
    out.svg = written("out.svg");
    return out;
}

/// The statuses of pelt(1) that a job without unreadable files can have. 5 is never right.
void check_status(const Job& job, const Outputs& outputs, Complaints& out) {
    const std::set<int> right = job.spoilt == Spoilt::no        ? std::set<int>{0, 1, 2, 3}
                                : job.spoilt == Spoilt::command ? std::set<int>{2, 3}
                                                                : std::set<int>{3, 2};
    if (!right.contains(outputs.status))
        out.push_back("status " + std::to_string(outputs.status));
    if (outputs.status != 0 && outputs.errors.find(": ") == std::string::npos)
        out.push_back("it failed and did not say why");
    if (outputs.status > 1 && outputs.any())
        out.push_back("it printed something although it failed");
    const bool whole = !outputs.table.empty() && !outputs.csv.empty() && !outputs.json.empty() &&
                       !outputs.markdown.empty() && !outputs.svg.empty();
    if (outputs.status == 0 && !whole)
        out.push_back("a format is missing");
}

Complaints complaints_about(const Job& job, const Outputs& outputs) {
    Complaints out;
    check_status(job, outputs, out);
    if (!out.empty() || outputs.json.empty())
        return out;
    const nlohmann::json sheet = nlohmann::json::parse(outputs.json, nullptr, false);
    if (sheet.is_discarded()) {
        out.push_back("JSON: not JSON");
        return out;
    }
    try {
        check_sheet(job, sheet, out);
        check_order(sheet, out);
        check_formats(job, outputs, sheet, out);
    } catch (const std::exception& error) { // a key that is not there, a number that is none
        out.push_back(std::string("unreadable: ") + error.what());
    }
    return out;
}

} // namespace pelt::generated
