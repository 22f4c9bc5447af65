// SPDX-License-Identifier: MIT
#include "cli/output.hpp"

#include "cli/values.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <csignal>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <system_error>
#include <utility>

namespace pelt::cli {
namespace {

namespace fs = std::filesystem;

Fault access_fault(const std::string& path, const std::string& what) {
    auto source = std::make_shared<Source>();
    source->name = path;
    return {Severity::access, {source, 0, 0}, "", what, ""};
}

/// The system's own words, such as "No space left on device", which people look up.
std::string system_words(int error) {
    return std::system_category().message(error);
}

Fault write_fault(const std::string& path, int error) {
    return access_fault(path, "cannot be written: " + system_words(error));
}

std::string folder_of(const std::string& path) {
    const std::string folder = fs::path(path).parent_path().string();
    return folder.empty() ? "." : folder;
}

/// Where a link leads, so that the link stays one; also where nothing is yet.
std::string behind_links(const std::string& path) {
    constexpr int most_links = 40; // as the kernel has it
    std::error_code error;
    if (const fs::path real = fs::canonical(path, error); !error)
        return real.string();
    fs::path at = path;
    for (int link = 0; link < most_links && fs::is_symlink(at, error); ++link)
        at = at.parent_path() / fs::read_symlink(at, error); // an absolute one takes its place
    return at.string();
}

bool exists_irregular(const std::string& path) {
    struct stat about {};
    return ::stat(path.c_str(), &about) == 0 && !S_ISREG(about.st_mode);
}

/// Writes all bytes; 0 or the error number.
int write_all(int descriptor, std::string_view bytes) {
    while (!bytes.empty()) {
        const ssize_t written = ::write(descriptor, bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR)
            continue;
        if (written < 0)
            return errno;
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return 0;
}

int write_and_close(int descriptor, std::string_view bytes) {
    const int error = write_all(descriptor, bytes);
    const int close_error = ::close(descriptor) == 0 ? 0 : errno;
    return error != 0 ? error : close_error;
}

/// While it lives, a pipe without a reader is an error that is told, and ends nobody.
class BrokenPipesAreTold {
public:
    BrokenPipesAreTold() {
        struct sigaction ignore {};
        ignore.sa_handler = SIG_IGN;
        ::sigemptyset(&ignore.sa_mask);
        ::sigaction(SIGPIPE, &ignore, &before_);
    }
    ~BrokenPipesAreTold() { ::sigaction(SIGPIPE, &before_, nullptr); }
    BrokenPipesAreTold(const BrokenPipesAreTold&) = delete;
    BrokenPipesAreTold& operator=(const BrokenPipesAreTold&) = delete;

private:
    struct sigaction before_ {};
};

/// While it lives, signals that would end the program wait, so that no temporary stays behind.
class SignalsWait {
public:
    SignalsWait() {
        sigset_t some;
        ::sigemptyset(&some);
        for (const int signal : {SIGINT, SIGTERM, SIGHUP, SIGQUIT})
            ::sigaddset(&some, signal);
        ::pthread_sigmask(SIG_BLOCK, &some, &before_);
    }
    ~SignalsWait() { ::pthread_sigmask(SIG_SETMASK, &before_, nullptr); }
    SignalsWait(const SignalsWait&) = delete;
    SignalsWait& operator=(const SignalsWait&) = delete;

private:
    sigset_t before_{};
};

/// The permissions that a newly made file would have, or those of the one to be replaced.
mode_t mode_for(const std::string& target) {
    struct stat about {};
    if (::stat(target.c_str(), &about) == 0)
        return about.st_mode & 07777U;
    const mode_t mask = ::umask(0);
    ::umask(mask);
    return 0666U & ~mask;
}

/// A file beside its target; removed unless it has been renamed.
class Temporary {
public:
    explicit Temporary(std::string target) : target_(std::move(target)) {}
    ~Temporary() {
        if (!path_.empty())
            ::unlink(path_.c_str());
    }
    Temporary(Temporary&& other) noexcept
        : target_(std::move(other.target_)), path_(std::exchange(other.path_, {})) {}
    Temporary(const Temporary&) = delete;
    Temporary& operator=(const Temporary&) = delete;
    Temporary& operator=(Temporary&&) = delete;

    int fill(std::string_view bytes) {
        std::string name = folder_of(target_) + "/.pelt-XXXXXX";
        const int descriptor = ::mkostemp(name.data(), O_CLOEXEC);
        if (descriptor < 0)
            return errno;
        path_ = name;
        const int error = ::fchmod(descriptor, mode_for(target_)) == 0 ? 0 : errno;
        const int write_error = write_and_close(descriptor, bytes);
        return error != 0 ? error : write_error;
    }

    int rename() {
        if (::rename(path_.c_str(), target_.c_str()) != 0)
            return errno;
        path_.clear();
        return 0;
    }

private:
    std::string target_;
    std::string path_;
};

/// To open a pipe may take as long as its reader likes, so signals do not wait here.
int write_directly(const std::string& path, std::string_view bytes) {
    const BrokenPipesAreTold told;
    const int descriptor = ::open(path.c_str(), O_WRONLY | O_CLOEXEC);
    return descriptor < 0 ? errno : write_and_close(descriptor, bytes);
}

} // namespace

std::optional<PlaceOfOutput> place_of_output(const std::string& path) {
    struct stat about {};
    const bool printed = path == "-";
    if ((printed ? ::fstat(STDOUT_FILENO, &about) : ::stat(path.c_str(), &about)) == 0)
        return S_ISREG(about.st_mode) ? std::optional(PlaceOfOutput{about.st_dev, about.st_ino, ""})
                                      : std::nullopt;
    const std::string behind = printed ? path : behind_links(path);
    if (printed || ::stat(folder_of(behind).c_str(), &about) != 0)
        return std::nullopt;
    return PlaceOfOutput{about.st_dev, about.st_ino, fs::path(behind).filename().string()};
}

std::string name_of_output(const std::string& path) {
    return path == "-" ? "standard output" : "--out " + file_in_quotes(path);
}

std::optional<Fault> cannot_write(const std::string& path) {
    struct stat about {};
    if (::stat(path.c_str(), &about) == 0) {
        if (S_ISDIR(about.st_mode))
            return access_fault(path, "is a folder, not a file to write to");
        if (::access(path.c_str(), W_OK) != 0)
            return write_fault(path, errno);
        if (!S_ISREG(about.st_mode))
            return std::nullopt;
    } else if (errno != ENOENT) {
        return write_fault(path, errno);
    }
    const std::string folder = folder_of(behind_links(path));
    if (::stat(folder.c_str(), &about) != 0)
        return access_fault(path, "cannot be written: the folder '" + folder + "' does not exist");
    if (::access(folder.c_str(), W_OK | X_OK) != 0)
        return access_fault(path,
                            "cannot be written: the folder '" + folder + "' is closed to you");
    return std::nullopt;
}

std::optional<Fault> write_files(const std::vector<Output>& files) {
    for (const Output& file : files)
        if (exists_irregular(file.path))
            if (const int error = write_directly(file.path, file.bytes); error != 0)
                return write_fault(file.path, error);
    const SignalsWait wait;
    std::vector<std::pair<const Output*, Temporary>> temporaries;
    for (const Output& file : files) {
        if (exists_irregular(file.path))
            continue;
        temporaries.emplace_back(&file, Temporary(behind_links(file.path)));
        if (const int error = temporaries.back().second.fill(file.bytes); error != 0)
            return write_fault(file.path, error);
    }
    for (auto& [file, temporary] : temporaries)
        if (const int error = temporary.rename(); error != 0)
            return write_fault(file->path, error);
    return std::nullopt;
}

std::optional<Fault> write_standard_output(std::string_view bytes) {
    const int error = write_and_close(STDOUT_FILENO, bytes);
    if (error == 0)
        return std::nullopt;
    return Fault{
        Severity::access, {}, "", "standard output cannot be written: " + system_words(error), ""};
}

} // namespace pelt::cli
