// SPDX-License-Identifier: MIT
// From files to vehicles and films: strict YAML or, for a vehicle, a table of its panels; every
// mistake with its place and a remedy.
// Lengths, percentages and money of options are read by quantities.hpp; keys.hpp holds the table of
// everything that a file may say.
#pragma once

#include "model/fault.hpp"
#include "model/film.hpp"
#include "model/jobs.hpp"
#include "model/shop.hpp"
#include "model/stock.hpp"
#include "model/vehicle.hpp"
#include "read/input_file.hpp"

#include <cstddef>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace pelt::read {

/// A value, or what is wrong with the file; warnings and notes come beside a value.
template <class T>
struct Reading {
    std::optional<T> value;
    Faults faults;                ///< by place
    std::size_t unlisted = 0;     ///< faults beyond the first hundred
    std::vector<InputFile> files; ///< that were opened for it, also where it came to nothing
};

/// Reads a whole file ("-": standard input). A file that cannot be opened or read, or is a
/// directory, is a fault of severity access; one over 8 MiB, of severity file.
Reading<std::shared_ptr<const Source>> load(const std::string& path);

/// Reads a file that a jobs file names: a path within its folder. What a link leads out of there,
/// and what is no plain file, is refused, as for scans.
Reading<std::shared_ptr<const Source>> load_beside(const Place& named_at, const std::string& file);

/// The path of an installed vehicle; none: there is none of that name. What keeps it from being
/// told which one is meant goes to `faults`, without its place.
using FindInstalled =
    std::function<std::optional<std::string>(const std::string& name, Faults& faults)>;

/// A file of another kind is told in a sentence of its own. Without a stopping fault there is a
/// value. A vehicle may also be a table (a file that ends in .csv); one that is like another is found
/// beside its file or by `find`.
Reading<Vehicle> vehicle(std::shared_ptr<const Source> source, const FindInstalled& find = {});
Reading<Film> film(std::shared_ptr<const Source> source);
Reading<Stock> stock(std::shared_ptr<const Source> source);
Reading<Shop> shop(std::shared_ptr<const Source> source);

/// The vehicle as if its sizes over all were these: every panel scaled, and guessed then. Without a
/// value `faults` says why; a width that may be taken over mirrors is warned of.
Reading<Vehicle> scaled_to(Vehicle vehicle, const Overall& size);

/// A vehicle as a table, a row a panel, and what of it a table cannot hold.
struct TableOfVehicle {
    std::string text;
    std::vector<std::string> left_out; ///< "openings: hood, front door"
};
TableOfVehicle table_of(const Vehicle& vehicle);

/// An empty table to measure by; with a vehicle its panels are listed, without their readings.
std::string table_to_fill_in(const Vehicle* vehicle);

/// A list under `jobs`, or one job a document. What is wrong with a job stands beside that job and
/// spoils no other; without a value the file holds no jobs that could be told apart.
Reading<Jobs> jobs(std::shared_ptr<const Source> source);

} // namespace pelt::read
