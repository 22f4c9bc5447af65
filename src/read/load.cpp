// SPDX-License-Identifier: MIT
// The only place that opens input files.
#include "read/read.hpp"
#include "read/text_check.hpp"

#include <sys/stat.h>

#include <array>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <memory>

namespace pelt::read {
namespace {

struct Close {
    void operator()(std::FILE* file) const {
        if (file != stdin)
            std::fclose(file);
    }
};
using File = std::unique_ptr<std::FILE, Close>;

Fault not_read(const std::string& path, const std::string& what, const std::string& remedy) {
    auto source = std::make_shared<Source>();
    source->name = path;
    return {Severity::access, {source, 0, 0}, "", what, remedy};
}

std::string reason(int error) {
    // strerror is safe here: files are read by one thread, before any other is started.
    return std::strerror(error); // NOLINT(concurrency-mt-unsafe)
}

bool is_directory(std::FILE* file) {
    struct stat status {};
    return fstat(fileno(file), &status) == 0 && S_ISDIR(status.st_mode);
}

/// Reads to the end, or a little more than a file may have.
bool read_all(std::FILE* file, std::string& text) {
    std::array<char, 65536> part{};
    while (text.size() <= largest_file) {
        const std::size_t count = std::fread(part.data(), 1, part.size(), file);
        text.append(part.data(), count);
        if (count < part.size())
            return std::ferror(file) == 0;
    }
    return true;
}

} // namespace

Reading<std::shared_ptr<const Source>> load(const std::string& path) {
    Reading<std::shared_ptr<const Source>> out;
    const bool standard = path == "-";
    errno = 0;
    const File file(standard ? stdin : std::fopen(path.c_str(), "rb"));
    if (!file) {
        out.faults.push_back(not_read(path, "cannot be opened: " + reason(errno),
                                      errno == ENOENT ? "check the name and the folder" : ""));
        return out;
    }
    if (is_directory(file.get())) {
        out.faults.push_back(not_read(path, "is a folder", "give a file in it"));
        return out;
    }
    auto source = std::make_shared<Source>();
    source->name = path;
    if (!read_all(file.get(), source->text)) {
        out.faults.push_back(not_read(path, "cannot be read: " + reason(errno), ""));
        return out;
    }
    if (source->text.size() > largest_file)
        out.faults.push_back(too_large(source));
    else
        out.value = std::move(source);
    return out;
}

} // namespace pelt::read
