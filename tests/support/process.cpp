// SPDX-License-Identifier: MIT
#include "process.hpp"

#include <fcntl.h>
#include <poll.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cerrno>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <stdexcept>

namespace pelt::support {
namespace {

[[noreturn]] void fail(const char* what) {
    throw std::runtime_error(std::string(what) + ": " + std::strerror(errno));
}

struct Channel {
    int read_end = -1;
    int write_end = -1;
};

Channel make_pipe() {
    int ends[2];
    if (::pipe2(ends, O_CLOEXEC) != 0)
        fail("pipe");
    return {ends[0], ends[1]};
}

Channel make_terminal() {
    const int ours = ::posix_openpt(O_RDWR | O_NOCTTY | O_CLOEXEC);
    if (ours < 0 || ::grantpt(ours) != 0 || ::unlockpt(ours) != 0)
        fail("pseudo-terminal");
    const int theirs = ::open(::ptsname(ours), O_RDWR | O_NOCTTY | O_CLOEXEC);
    if (theirs < 0)
        fail("pseudo-terminal");
    return {ours, theirs};
}

std::vector<std::string> environment_of(const Run& what) {
    std::vector<std::string> out;
    for (const auto& [name, value] : what.environment)
        out.push_back(name + "=" + value);
    for (const char* name : {"ASAN_OPTIONS", "UBSAN_OPTIONS", "LSAN_OPTIONS", "GCOV_PREFIX"})
        if (const char* value = std::getenv(name))
            out.push_back(std::string(name) + "=" + value);
    return out;
}

std::vector<char*> pointers_to(std::vector<std::string>& texts) {
    std::vector<char*> out;
    for (std::string& text : texts)
        out.push_back(text.data());
    out.push_back(nullptr);
    return out;
}

/// Takes what has come; false at the end. A closed terminal reads as EIO.
bool take(int descriptor, std::string& into) {
    char buffer[4096];
    const ssize_t got = ::read(descriptor, buffer, sizeof buffer);
    if (got < 0 && errno == EINTR)
        return true;
    if (got <= 0)
        return false;
    into.append(buffer, static_cast<std::size_t>(got));
    return true;
}

/// Reads both until both have ended, so that neither can block the program.
void drain(int output, int errors, Result& into) {
    pollfd both[2] = {{output, POLLIN, 0}, {errors, POLLIN, 0}};
    std::string* const texts[2] = {&into.output, &into.errors};
    while (both[0].fd >= 0 || both[1].fd >= 0) {
        if (::poll(both, 2, -1) < 0 && errno != EINTR)
            fail("poll");
        for (int i = 0; i < 2; ++i)
            if (both[i].fd >= 0 && both[i].revents != 0 && !take(both[i].fd, *texts[i]))
                both[i].fd = -1;
    }
}

int status_of(pid_t child) {
    int status = 0;
    while (::waitpid(child, &status, 0) < 0)
        if (errno != EINTR)
            fail("waitpid");
    return WIFSIGNALED(status) ? 128 + WTERMSIG(status) : WEXITSTATUS(status);
}

} // namespace

Result run(const Run& what) {
    const ScratchFolder scratch;
    scratch.write("input", what.input);
    const std::string input_path = scratch.path() + "/input";
    const Channel output = what.output_to_terminal ? make_terminal() : make_pipe();
    const Channel errors = what.output_to_terminal ? make_terminal() : make_pipe();
    std::vector<std::string> words = what.words;
    std::vector<std::string> variables = environment_of(what);
    const std::vector<char*> argv = pointers_to(words);
    const std::vector<char*> envp = pointers_to(variables);
    const pid_t child = ::fork();
    if (child < 0)
        fail("fork");
    if (child == 0) {
        const int input = ::open(input_path.c_str(), O_RDONLY);
        if (input < 0 || ::dup2(input, 0) < 0 || ::dup2(output.write_end, 1) < 0 ||
            ::dup2(errors.write_end, 2) < 0 ||
            (!what.folder.empty() && ::chdir(what.folder.c_str()) != 0))
            ::_exit(127);
        ::execve(argv[0], argv.data(), envp.data());
        ::_exit(127);
    }
    ::close(output.write_end);
    ::close(errors.write_end);
    Result result;
    drain(output.read_end, errors.read_end, result);
    ::close(output.read_end);
    ::close(errors.read_end);
    result.status = status_of(child);
    return result;
}

ScratchFolder::ScratchFolder() {
    std::string name = (std::filesystem::temp_directory_path() / "pelt-test-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr)
        fail("mkdtemp");
    path_ = name;
}

ScratchFolder::~ScratchFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
}

void ScratchFolder::write(const std::string& name, const std::string& bytes) const {
    const std::filesystem::path path = std::filesystem::path(path_) / name;
    std::filesystem::create_directories(path.parent_path());
    std::ofstream file(path, std::ios::binary);
    file.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    if (!file.flush())
        throw std::runtime_error(path.string() + " cannot be written");
}

std::string contents_of(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    if (!file)
        throw std::runtime_error(path + " cannot be opened");
    return {std::istreambuf_iterator<char>(file), {}};
}

} // namespace pelt::support
