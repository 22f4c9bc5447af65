// SPDX-License-Identifier: MIT
// The built program, run in a folder of its own that holds a small right job.
#pragma once

#include "process.hpp"

#include <map>
#include <string>
#include <vector>

namespace pelt::cli_test {

inline constexpr const char* small_van = "vehicle: Small van\n"
                                         "panels:\n"
                                         "  hood: {size: [1200, 800], forward: up, edges: none}\n"
                                         "  roof: {size: [1300, 900], forward: up, edges: none}\n";
inline constexpr const char* small_film =
    "film: Small film\n"
    "roll: {width: 1524 mm, trim: 6 mm}\n"
    "direction: two-way\n"
    "allowances: {wrap: 0 mm, bleed: 10 mm, handling: 40 mm, overlap: 10 mm, gap: 4 mm, "
    "flush: 2 mm}\n";

class Program {
public:
    Program() {
        folder_.write("van.yaml", small_van);
        folder_.write("film.yaml", small_film);
        folder_.write("shop.yaml", "shop: Corner\nrate: 50\n");
        folder_.write("jobs.yaml", "jobs: [{job: one, vehicle: van.yaml, film: film.yaml}]\n");
    }

    support::Result operator()(std::vector<std::string> words) const {
        return start(std::move(words), false);
    }
    support::Result in_terminal(std::vector<std::string> words) const {
        return start(std::move(words), true);
    }
    /// Runs a line of sh, in which `pelt` is the program.
    support::Result shell(const std::string& line) const {
        auto what = run_of({"/bin/sh", "-c", line}, false);
        return support::run(what);
    }

    std::map<std::string, std::string> environment{{"LC_ALL", "C"}, {"TERM", "xterm"}};
    std::string input;
    const support::ScratchFolder& folder() const { return folder_; }
    std::string file(const std::string& name) const {
        return support::contents_of(folder_.path() + "/" + name);
    }

private:
    support::Run run_of(std::vector<std::string> words, bool terminal) const {
        const std::string program = PELT_PROGRAM;
        auto variables = environment;
        variables["PATH"] = program.substr(0, program.rfind('/')) + ":/usr/bin:/bin";
        return {.words = std::move(words),
                .folder = folder_.path(),
                .environment = std::move(variables),
                .input = input,
                .output_to_terminal = terminal};
    }
    support::Result start(std::vector<std::string> words, bool terminal) const {
        words.insert(words.begin(), PELT_PROGRAM);
        return support::run(run_of(std::move(words), terminal));
    }

    support::ScratchFolder folder_;
};

} // namespace pelt::cli_test
