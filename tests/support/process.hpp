// SPDX-License-Identifier: MIT
// Running a program and catching all that comes out of it.
#pragma once

#include <map>
#include <string>
#include <vector>

namespace pelt::support {

struct Run {
    std::vector<std::string> words;                 ///< the program's path first
    std::string folder;                             ///< to run in; empty: the present one
    std::map<std::string, std::string> environment; ///< all that it gets, but for sanitizers' own
    std::string input = {};
    bool output_to_terminal = false; ///< standard output and error are a pseudo-terminal each
};

struct Result {
    std::string output;
    std::string errors;
    int status = 0; ///< the exit status, or 128 + the signal that ended it, as shells say it
};

/// Throws std::runtime_error when the program cannot be started.
Result run(const Run& what);

/// A folder of its own that is removed with all that is in it.
class ScratchFolder {
public:
    ScratchFolder();
    ~ScratchFolder();
    ScratchFolder(const ScratchFolder&) = delete;
    ScratchFolder& operator=(const ScratchFolder&) = delete;
    const std::string& path() const { return path_; }
    void write(const std::string& name, const std::string& bytes) const;

private:
    std::string path_;
};

std::string contents_of(const std::string& path);

} // namespace pelt::support
