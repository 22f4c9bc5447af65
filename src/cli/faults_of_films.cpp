// SPDX-License-Identifier: MIT
#include "cli/faults_of_films.hpp"

#include "read/suggest.hpp"

#include <algorithm>
#include <utility>

namespace pelt::cli {
namespace {

/// Behind what panels have in common, so that those with the same films stay together.
void add_films(Fault& fault, const std::string& films) {
    const std::size_t at = fault.common.empty() ? fault.what.size() : fault.common.size();
    fault.what.insert(at, films);
    if (!fault.common.empty())
        fault.common += films;
}

} // namespace

void FaultsOfFilms::add(const Faults& faults, const std::string& film) {
    for (const Fault& fault : faults) {
        const auto same = std::find_if(found_.begin(), found_.end(), [&](const Found& f) {
            return f.fault.severity == fault.severity && f.fault.place.line == fault.place.line &&
                   f.fault.panel == fault.panel && f.fault.what == fault.what &&
                   f.fault.remedy == fault.remedy;
        });
        if (same == found_.end())
            found_.push_back({fault, {film}});
        else if (same->films.back() != film)
            same->films.push_back(film);
    }
}

Faults FaultsOfFilms::all() const {
    Faults out;
    for (Found found : found_) {
        if (found.films.size() < films_)
            add_films(found.fault, " (film " + read::listed(found.films, "and") + ")");
        out.push_back(std::move(found.fault));
    }
    return out;
}

} // namespace pelt::cli
