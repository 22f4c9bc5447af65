// SPDX-License-Identifier: MIT
// The files that come with pelt, and the built program run on them.
#pragma once

#include "process.hpp"

#include <algorithm>
#include <filesystem>
#include <string>
#include <vector>

namespace pelt::data_test {

/// Paths of the .yaml files of a folder of the repository, from its top, sorted.
inline std::vector<std::string> files_of(const std::string& folder) {
    std::vector<std::string> paths;
    for (const auto& entry :
         std::filesystem::directory_iterator(std::string(PELT_TOP) + "/" + folder))
        if (entry.path().extension() == ".yaml")
            paths.push_back(folder + "/" + entry.path().filename().string());
    std::sort(paths.begin(), paths.end());
    return paths;
}

inline std::vector<std::string> shipped_files() {
    std::vector<std::string> all;
    for (const char* folder : {"vehicles", "films", "examples"}) {
        const std::vector<std::string> some = files_of(folder);
        all.insert(all.end(), some.begin(), some.end());
    }
    return all;
}

inline std::string text_of(const std::string& path) {
    return support::contents_of(std::string(PELT_TOP) + "/" + path);
}

/// Runs pelt at the top of the repository.
inline support::Result pelt(std::vector<std::string> words) {
    words.insert(words.begin(), PELT_PROGRAM);
    return support::run({.words = std::move(words),
                         .folder = PELT_TOP,
                         .environment = {{"LC_ALL", "C"}, {"TERM", "dumb"}}});
}

/// Runs a line by the shell, as somebody who types it there.
inline support::Result shell(const std::string& line) {
    const std::string program = PELT_PROGRAM;
    const std::string folder = program.substr(0, program.rfind('/'));
    return support::run({.words = {"/bin/sh", "-c", line},
                         .folder = PELT_TOP,
                         .environment = {{"LC_ALL", "C.UTF-8"},
                                         {"TERM", "dumb"},
                                         {"PATH", folder + ":/usr/bin:/bin"}}});
}

} // namespace pelt::data_test
