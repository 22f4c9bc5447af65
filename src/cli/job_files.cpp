// SPDX-License-Identifier: MIT
#include "cli/job_files.hpp"

#include "cli/like_size.hpp"
#include "cli/values.hpp"

#include <sys/stat.h>

#include <algorithm>
#include <filesystem>
#include <memory>
#include <set>
#include <utility>

namespace pelt::cli {
namespace {

namespace fs = std::filesystem;

bool leaves_its_folder(const fs::path& path) {
    return path.is_absolute() ||
           std::any_of(path.begin(), path.end(), [](const fs::path& part) { return part == ".."; });
}

} // namespace

JobFiles::JobFiles(const World& world, const std::string& jobs_file)
    : world_(world), folder_(jobs_file == "-" ? "" : fs::path(jobs_file).parent_path().string()) {}

bool JobFiles::lies_beside(const std::string& name) const {
    std::error_code error;
    return fs::exists(fs::symlink_status(fs::path(folder_) / name, error));
}

std::vector<read::InputFile> JobFiles::wanted_by(const Jobs& jobs) const {
    std::set<std::pair<std::string, Kind>> names;
    for (const ReadJob& read : jobs.jobs) {
        if (!read.job)
            continue;
        names.emplace(read.job->vehicle, Wanted::vehicle);
        for (const FilmOfJob& film : read.job->films)
            names.emplace(film.film, Wanted::film);
        if (!read.job->stock.empty())
            names.emplace(read.job->stock, std::nullopt);
    }
    std::vector<read::InputFile> out;
    for (const auto& [name, kind] : names) {
        Faults faults; // told when the file is read
        const std::string path = lies_beside(name) ? (fs::path(folder_) / name).string()
                                 : kind            ? path_of(name, *kind, world_, faults)
                                                   : name;
        struct stat about {};
        if (faults.empty() && ::stat(path.c_str(), &about) == 0)
            out.push_back({path, about.st_dev, about.st_ino});
    }
    return out;
}

template <class T>
std::optional<T> JobFiles::value_of(read::Reading<T> reading, Faults& faults) {
    faults.insert(faults.end(), reading.faults.begin(), reading.faults.end());
    const std::lock_guard lock(inputs_mutex_);
    inputs_.insert(inputs_.end(), reading.files.begin(), reading.files.end());
    return std::move(reading.value);
}

std::shared_ptr<const Source> JobFiles::source(const std::string& name, Kind kind,
                                               const Place& place, Faults& faults) {
    if (leaves_its_folder(name)) {
        faults.push_back({Severity::file, place, "",
                          in_quotes(name) + " lies outside the folder of the jobs file",
                          "put it beside the jobs file"});
        return nullptr;
    }
    if (!kind || lies_beside(name))
        return value_of(read::load_beside(place, name), faults).value_or(nullptr);
    Faults not_found;
    const std::string path = path_of(name, *kind, world_, not_found);
    for (Fault& fault : not_found) {
        fault.place = place;
        faults.push_back(std::move(fault));
    }
    return stops(faults) ? nullptr : value_of(read::load(path), faults).value_or(nullptr);
}

std::optional<Vehicle> JobFiles::vehicle(const std::string& name, const Place& place,
                                         Faults& faults) {
    const auto text = source(name, Wanted::vehicle, place, faults);
    return text ? value_of(read::vehicle(text, installed_vehicles(world_)), faults) : std::nullopt;
}

std::optional<Film> JobFiles::film(const std::string& name, const Place& place, Faults& faults) {
    const std::lock_guard lock(films_mutex_);
    const auto known = films_.find(name);
    if (known != films_.end())
        return value_of(known->second, faults);
    Faults not_read;
    const auto text = source(name, Wanted::film, place, not_read);
    faults.insert(faults.end(), not_read.begin(), not_read.end());
    return text ? value_of(films_.emplace(name, read::film(text)).first->second, faults)
                : std::nullopt;
}

std::optional<Stock> JobFiles::stock(const std::string& name, const Place& place, Faults& faults) {
    const auto text = source(name, std::nullopt, place, faults);
    return text ? value_of(read::stock(text), faults) : std::nullopt;
}

} // namespace pelt::cli
