// SPDX-License-Identifier: MIT
#include "cli/installed.hpp"

#include "cli/nearest.hpp"
#include "cli/values.hpp"

#include <algorithm>
#include <array>
#include <filesystem>
#include <system_error>
#include <tuple>

namespace pelt::cli {
namespace {

namespace fs = std::filesystem;
using Files = std::vector<InstalledFile>;

constexpr std::string_view ending = ".yaml";

/// Names that installed files had once; they still open what they opened.
struct Renamed {
    std::string_view once;
    std::string_view now;
};
constexpr std::array<Renamed, 1> renamed{{{"family-saloon", "family-sedan"}}};

std::string_view present_name(std::string_view name) {
    const auto row = std::find_if(renamed.begin(), renamed.end(),
                                  [&](const Renamed& r) { return r.once == name; });
    return row == renamed.end() ? name : row->now;
}

void add_folders_of_path(const std::string& list, std::vector<std::string>& out) {
    std::size_t begin = 0;
    while (begin <= list.size()) {
        const std::size_t end = std::min(list.find(':', begin), list.size());
        if (end > begin)
            out.push_back(list.substr(begin, end - begin));
        begin = end + 1;
    }
}

void add_files_of(const fs::path& folder, bool is_film, Files& out) {
    std::error_code error;
    fs::directory_iterator entry(folder, error);
    while (!error && entry != fs::directory_iterator{}) {
        std::error_code no_type;
        if (entry->path().extension() == ending && entry->is_regular_file(no_type))
            out.push_back({entry->path().stem().string(), entry->path().string(), is_film});
        entry.increment(error);
    }
}

bool fits(const InstalledFile& file, Wanted wanted) {
    return wanted == Wanted::either || file.is_film == (wanted == Wanted::film);
}

std::string_view noun(Wanted wanted) {
    switch (wanted) {
    case Wanted::vehicle:
        return "vehicle";
    case Wanted::film:
        return "film";
    case Wanted::either:
        return "vehicle or film";
    }
    return "";
}

Fault not_found(const std::string& operand, Wanted wanted, const Files& files) {
    std::vector<std::string> names;
    for (const InstalledFile& file : files)
        if (fits(file, wanted))
            names.push_back(file.name);
    const std::string hint = did_you_mean(nearest(operand, names));
    return {Severity::access,
            {},
            "",
            "no file " + file_in_quotes(operand) + ", and no installed " +
                std::string(noun(wanted)) + " of that name",
            (hint.empty() ? "" : hint + " ") + "'pelt list' shows what is installed"};
}

} // namespace

std::vector<std::string> data_folders(const World& world) {
    std::vector<std::string> out;
    add_folders_of_path(world.variable("PELT_PATH").value_or(""), out);
    if (!world.folder_of_program.empty()) {
        const fs::path program(world.folder_of_program);
        out.push_back((program.parent_path() / "share" / "pelt").string());
        out.push_back((program / "share" / "pelt").string());
    }
    return out;
}

std::vector<InstalledFile> installed_files(const World& world) {
    Files files;
    for (const std::string& folder : data_folders(world)) {
        Files here;
        add_files_of(fs::path(folder) / "vehicles", false, here);
        add_files_of(fs::path(folder) / "films", true, here);
        files.insert(files.end(), here.begin(), here.end());
    }
    const auto by_name = [](const InstalledFile& a, const InstalledFile& b) {
        return std::tie(a.is_film, a.name) < std::tie(b.is_film, b.name);
    };
    std::stable_sort(files.begin(), files.end(), by_name);
    const auto same = [](const InstalledFile& a, const InstalledFile& b) {
        return a.is_film == b.is_film && a.name == b.name;
    };
    files.erase(std::unique(files.begin(), files.end(), same), files.end());
    return files;
}

std::string path_of(const std::string& operand, Wanted wanted, const World& world, Faults& faults) {
    std::error_code error;
    if (operand == "-" || operand.find('/') != std::string::npos ||
        (fs::exists(operand, error) && !fs::is_directory(operand, error)))
        return operand;
    const Files files = installed_files(world);
    for (const std::string_view name : {std::string_view(operand), present_name(operand)})
        for (const InstalledFile& file : files)
            if (file.name == name && fits(file, wanted))
                return file.path;
    if (fs::is_directory(operand, error))
        return operand; // reading it says what is wrong
    faults.push_back(not_found(operand, wanted, files));
    return operand;
}

} // namespace pelt::cli
