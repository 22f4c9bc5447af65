// SPDX-License-Identifier: MIT
// The only place that opens input files.
#include "model/limits.hpp"
#include "read/quantities.hpp"
#include "read/read.hpp"
#include "read/source_beside.hpp"
#include "read/table/cells.hpp"
#include "read/text_check.hpp"

#include <sys/stat.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <memory>
#include <system_error>

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
    // Not by strerror: jobs are read by several threads.
    return std::generic_category().message(error);
}

std::optional<InputFile> identity_of(std::FILE* file, const std::string& path) {
    struct stat status {};
    if (fstat(fileno(file), &status) != 0)
        return std::nullopt;
    return InputFile{path, status.st_dev, status.st_ino};
}

bool is_directory(std::FILE* file) {
    struct stat status {};
    return fstat(fileno(file), &status) == 0 && S_ISDIR(status.st_mode);
}

/// Reads to the end, or a little more than `most` bytes.
bool read_all(std::FILE* file, std::string& text, std::size_t most) {
    std::array<char, 65536> part{};
    while (text.size() <= most) {
        const std::size_t count = std::fread(part.data(), 1, part.size(), file);
        text.append(part.data(), count);
        if (count < part.size())
            return std::ferror(file) == 0;
    }
    return true;
}

/// Whether a path, links followed, lies in a folder or below.
bool lies_in(const std::filesystem::path& path, const std::filesystem::path& folder) {
    std::error_code error;
    const std::filesystem::path real = std::filesystem::canonical(path, error);
    if (error)
        return true; // it will not open either, which says more
    const std::filesystem::path home = std::filesystem::canonical(folder, error);
    return !error &&
           std::mismatch(home.begin(), home.end(), real.begin(), real.end()).first == home.end();
}

} // namespace

BytesRead bytes_beside(const std::string& owner, const std::string& file, std::size_t most,
                       const Naming& naming) {
    std::filesystem::path folder;
    if (owner != "-")
        folder = std::filesystem::path(owner).parent_path();
    if (folder.empty())
        folder = ".";
    const std::filesystem::path path = folder / file;
    if (!lies_in(path, folder))
        return {{},
                true,
                "is a link out of " + naming.named_by + "'s folder",
                "put the file itself there"};
    std::error_code error;
    if (std::filesystem::exists(path, error) && !std::filesystem::is_regular_file(path, error))
        return {{}, true, "is no plain file", naming.give};
    errno = 0;
    const File opened(std::fopen(path.c_str(), "rb"));
    if (!opened)
        return {{},
                true,
                "cannot be opened: " + reason(errno),
                errno == ENOENT ? "it is looked for beside " + naming.named_by : ""};
    const std::optional<InputFile> identity = identity_of(opened.get(), path.string());
    std::string bytes;
    if (!read_all(opened.get(), bytes, most))
        return {{}, true, "cannot be read: " + reason(errno), ""};
    if (bytes.size() > most)
        return {
            {}, false, "has more than " + std::to_string(most >> 20U) + " MiB", naming.too_large};
    return {std::move(bytes), false, "", "", identity};
}

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
    if (const auto identity = identity_of(file.get(), path))
        out.files.push_back(*identity);
    auto source = std::make_shared<Source>();
    source->name = path;
    source->is_table = is_table_name(path);
    if (!read_all(file.get(), source->text, limit::file_bytes)) {
        out.faults.push_back(not_read(path, "cannot be read: " + reason(errno), ""));
        return out;
    }
    if (source->text.size() > limit::file_bytes)
        out.faults.push_back(too_large(source));
    else
        out.value = std::move(source);
    return out;
}

Reading<std::shared_ptr<const Source>> source_beside(const Place& named_at, const std::string& file,
                                                     const std::string& called,
                                                     const Naming& naming) {
    const std::string& owner = named_at.source->name;
    BytesRead got = bytes_beside(owner, file, limit::file_bytes, naming);
    Reading<std::shared_ptr<const Source>> out;
    if (got.file)
        out.files.push_back(*got.file);
    if (!got.bytes) {
        out.faults.push_back({got.not_opened ? Severity::access : Severity::file, named_at, "",
                              called + " " + got.what, got.remedy});
        return out;
    }
    auto source = std::make_shared<Source>();
    if (owner != "-")
        source->name = std::filesystem::path(owner).parent_path() / file;
    else
        source->name = file;
    source->is_table = is_table_name(file);
    source->text = *std::move(got.bytes);
    out.value = std::move(source);
    return out;
}

Reading<std::shared_ptr<const Source>> load_beside(const Place& named_at, const std::string& file) {
    return source_beside(named_at, file, pelt::read::quoted(file),
                         {"the jobs file", "give a YAML file", "make it smaller"});
}

} // namespace pelt::read
