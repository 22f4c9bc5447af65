// SPDX-License-Identifier: MIT
#include "cli/job_files.hpp"

#include "cli/installed.hpp"
#include "cli/values.hpp"

#include <algorithm>
#include <filesystem>
#include <memory>
#include <utility>

namespace pelt::cli {
namespace {

namespace fs = std::filesystem;

bool leaves_its_folder(const fs::path& path) {
    return path.is_absolute() ||
           std::any_of(path.begin(), path.end(), [](const fs::path& part) { return part == ".."; });
}

template <class T>
std::optional<T> value_of(read::Reading<T> reading, Faults& faults) {
    faults.insert(faults.end(), reading.faults.begin(), reading.faults.end());
    return std::move(reading.value);
}

} // namespace

JobFiles::JobFiles(const World& world, const std::string& jobs_file)
    : world_(world), folder_(jobs_file == "-" ? "" : fs::path(jobs_file).parent_path().string()) {}

std::shared_ptr<const Source> JobFiles::source(const std::string& name, bool is_film,
                                               bool may_be_installed, const Place& place,
                                               Faults& faults) {
    if (leaves_its_folder(name)) {
        faults.push_back({Severity::file, place, "",
                          in_quotes(name) + " lies outside the folder of the jobs file",
                          "put it beside the jobs file"});
        return nullptr;
    }
    std::error_code error;
    std::string path = (fs::path(folder_) / name).string();
    if (may_be_installed && !fs::exists(path, error)) {
        Faults not_found;
        path = path_of(name, is_film ? Wanted::film : Wanted::vehicle, world_, not_found);
        for (Fault& fault : not_found) {
            fault.place = place;
            faults.push_back(std::move(fault));
        }
        if (!not_found.empty())
            return nullptr;
    }
    return value_of(read::load(path), faults).value_or(nullptr);
}

std::optional<Vehicle> JobFiles::vehicle(const std::string& name, const Place& place,
                                         Faults& faults) {
    const auto text = source(name, false, true, place, faults);
    return text ? value_of(read::vehicle(text), faults) : std::nullopt;
}

std::optional<Film> JobFiles::film(const std::string& name, const Place& place, Faults& faults) {
    const std::lock_guard lock(mutex_);
    const auto known = films_.find(name);
    if (known != films_.end())
        return value_of(known->second, faults);
    const auto text = source(name, true, true, place, faults);
    return text ? value_of(films_.emplace(name, read::film(text)).first->second, faults)
                : std::nullopt;
}

std::optional<Stock> JobFiles::stock(const std::string& name, const Place& place, Faults& faults) {
    const auto text = source(name, false, false, place, faults);
    return text ? value_of(read::stock(text), faults) : std::nullopt;
}

} // namespace pelt::cli
