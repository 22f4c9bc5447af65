// SPDX-License-Identifier: MIT
// Reading the files that operands name, telling what is wrong with each as it is read. Inside cli/
// only.
#pragma once

#include "cli/context.hpp"
#include "cli/installed.hpp"
#include "read/read.hpp"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace pelt::cli {

struct VehicleAndFilm {
    Vehicle vehicle;
    std::optional<Film> film;
};

class Files {
public:
    explicit Files(const Context& context) : context_(context) {}

    /// The text of the file; none when it could not be had, which has then been told.
    std::shared_ptr<const Source> source(const std::string& operand, Wanted wanted);
    /// As `--like-size` has it, where that is given.
    std::optional<Vehicle> vehicle(const std::string& operand);
    std::optional<Film> film(const std::string& operand);
    std::optional<Stock> stock(const std::string& path);
    /// VEHICLE [FILM]. Both are read before it gives up, so that all faults of both are told at
    /// once; none when either is wrong.
    std::optional<VehicleAndFilm> vehicle_and_film(const std::vector<std::string>& operands);

    /// The worst of all that was told.
    int status() const { return status_of_worst_; }
    /// Tells faults that came up outside a file, and counts them in.
    void tell(const Faults& faults);
    /// Counts files in that were read, or will be.
    void note(const std::vector<read::InputFile>& files) {
        inputs_.insert(inputs_.end(), files.begin(), files.end());
    }
    /// Tells which of the outputs ("-": standard output) are a file that was read, under whatever
    /// name: writing there would destroy it. True where none is.
    bool spared_by(const std::vector<std::string>& outputs);
    /// Tells a reading's faults, notes its files and hands out its value.
    template <class T>
    std::optional<T> value_of(read::Reading<T> reading, const std::string& name) {
        tell(reading.faults);
        note(reading.files);
        context_.messages.tell_unlisted(name, reading.unlisted);
        return std::move(reading.value);
    }

private:
    const Context& context_;
    std::vector<read::InputFile> inputs_;
    Severity worst_ = Severity::note;
    int status_of_worst_ = 0;
};

} // namespace pelt::cli
