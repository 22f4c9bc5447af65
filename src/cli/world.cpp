// SPDX-License-Identifier: MIT
#include "cli/world.hpp"

#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <system_error>

namespace pelt::cli {
namespace {

std::optional<std::string> variable(const char* name) {
    const char* value = std::getenv(name);
    return value == nullptr ? std::nullopt : std::optional<std::string>(value);
}

std::string folder_of_program() {
    std::error_code error;
    const std::filesystem::path program = std::filesystem::read_symlink("/proc/self/exe", error);
    return error ? std::string() : program.parent_path().string();
}

} // namespace

World real_world() {
    return {variable, ::isatty(STDIN_FILENO) == 1, ::isatty(STDOUT_FILENO) == 1,
            ::isatty(STDERR_FILENO) == 1, folder_of_program()};
}

} // namespace pelt::cli
