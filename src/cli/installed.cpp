// SPDX-License-Identifier: MIT
#include "cli/installed.hpp"

#include "cli/nearest.hpp"
#include "cli/values.hpp"

#include <dirent.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <filesystem>
#include <memory>
#include <new>
#include <system_error>
#include <tuple>

namespace pelt::cli {
namespace {

namespace fs = std::filesystem;
using Files = std::vector<InstalledFile>;

constexpr std::string_view ending = ".yaml";

/// A folder from the environment; relative ones are to be ignored.
std::optional<fs::path> absolute_folder(const World& world, const char* name) {
    const fs::path folder(world.variable(name).value_or(""));
    return folder.is_absolute() ? std::optional(folder) : std::nullopt;
}

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

struct CloseFolder {
    void operator()(DIR* folder) const { ::closedir(folder); }
};

/// By the system's own calls: the library's iterator asks for memory where nothing can be thrown,
/// and ends the program when there is none.
void add_files_of(const fs::path& folder, InstalledFile like, Files& out) {
    const std::unique_ptr<DIR, CloseFolder> open(::opendir(folder.c_str()));
    if (!open && errno == ENOMEM)
        throw std::bad_alloc();
    while (const dirent* entry = open ? ::readdir(open.get()) : nullptr) {
        const fs::path path = folder / entry->d_name;
        std::error_code no_type;
        if (path.extension() == ending && fs::is_regular_file(path, no_type)) {
            like.name = path.stem().string();
            like.path = path.string();
            out.push_back(like);
        }
    }
}

bool is_called_alike(const InstalledFile& a, const InstalledFile& b) {
    return a.is_film == b.is_film && a.name == b.name;
}

/// Of files that are called alike, the first. Where that is the user's, it notes the next.
void drop_hidden(Files& sorted) {
    Files kept;
    for (InstalledFile& file : sorted) {
        const bool hidden = !kept.empty() && is_called_alike(kept.back(), file);
        if (!hidden)
            kept.push_back(std::move(file));
        else if (kept.back().is_yours && !file.is_yours && kept.back().also_at.empty())
            kept.back().also_at = file.path;
    }
    sorted = std::move(kept);
}

bool is_one_folder(const fs::path& a, const fs::path& b) {
    std::error_code error;
    return a == b || fs::equivalent(a, b, error);
}

std::vector<std::string> folders_beside_program(const World& world) {
    if (world.folder_of_program.empty())
        return {};
    const fs::path program(world.folder_of_program);
    return {(program.parent_path() / "share" / "pelt").string(),
            (program / "share" / "pelt").string()};
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
    const std::vector<std::string> beside = folders_beside_program(world);
    if (const auto own = own_folder(world))
        out.push_back(*own);
    out.insert(out.end(), beside.begin(), beside.end());
    return out;
}

std::optional<std::string> own_folder(const World& world) {
    auto data = absolute_folder(world, "XDG_DATA_HOME");
    if (!data)
        if (const auto home = absolute_folder(world, "HOME"))
            data = *home / ".local" / "share";
    if (!data)
        return std::nullopt;
    const fs::path own = *data / "pelt";
    // Where pelt itself is installed there, its files are no user's own.
    const std::vector<std::string> beside = folders_beside_program(world);
    const bool is_installed = std::any_of(beside.begin(), beside.end(), [&](const auto& folder) {
        return is_one_folder(own, folder);
    });
    return is_installed ? std::nullopt : std::optional(own.string());
}

Fault called_alike(const InstalledFile& file) {
    const std::string kind = file.is_film ? "film" : "vehicle";
    return {Severity::access,
            {},
            "",
            file_in_quotes(file.name) + " is your " + kind + " " + file_in_quotes(file.path) +
                " and an installed " + kind + " " + file_in_quotes(file.also_at),
            "give yours another name, or write the path of the one that you mean"};
}

std::vector<InstalledFile> installed_files(const World& world) {
    Files files;
    const auto own = own_folder(world);
    for (const std::string& folder : data_folders(world)) {
        Files here;
        const bool is_yours = own == folder;
        add_files_of(fs::path(folder) / "vehicles", {"", "", false, is_yours}, here);
        add_files_of(fs::path(folder) / "films", {"", "", true, is_yours}, here);
        files.insert(files.end(), here.begin(), here.end());
    }
    const auto by_name = [](const InstalledFile& a, const InstalledFile& b) {
        return std::tie(a.is_film, a.name) < std::tie(b.is_film, b.name);
    };
    std::stable_sort(files.begin(), files.end(), by_name);
    drop_hidden(files);
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
            if (file.name == name && fits(file, wanted)) {
                if (!file.also_at.empty())
                    faults.push_back(called_alike(file));
                return file.path;
            }
    if (fs::is_directory(operand, error))
        return operand; // reading it says what is wrong
    faults.push_back(not_found(operand, wanted, files));
    return operand;
}

} // namespace pelt::cli
