// SPDX-License-Identifier: MIT
// Bytes from a file or from standard input.
#include "read/read.hpp"
#include "read/text_check.hpp"

#include <stdio.h>

#include <cerrno>
#include <cstring>
#include <filesystem>
#include <memory>

namespace pelt::read {
namespace {

struct Close {
    void operator()(FILE* file) const {
        if (file != stdin)
            std::fclose(file);
    }
};
using File = std::unique_ptr<FILE, Close>;

Fault cannot(const std::string& name, std::string what, std::string remedy) {
    auto source = std::make_shared<Source>();
    source->name = name;
    return {Severity::access, {std::move(source), 0, 0}, "", std::move(what), std::move(remedy)};
}

/// Reads up to one byte more than the largest file, so that check_text can tell.
bool read_all(FILE* file, std::string& text) {
    std::string buffer(std::size_t{1} << 16U, '\0');
    while (text.size() <= largest_file) {
        const std::size_t got = std::fread(buffer.data(), 1, buffer.size(), file);
        text.append(buffer, 0, got);
        if (got < buffer.size())
            break;
    }
    return std::ferror(file) == 0;
}

} // namespace

Reading<std::shared_ptr<const Source>> load(const std::string& path) {
    Reading<std::shared_ptr<const Source>> out;
    std::error_code ignored;
    if (path != "-" && std::filesystem::is_directory(path, ignored)) {
        out.faults.push_back(cannot(path, "is a folder", "name a file in it"));
        return out;
    }
    errno = 0;
    const File file(path == "-" ? stdin : std::fopen(path.c_str(), "rb"));
    auto source = std::make_shared<Source>();
    source->name = path;
    if (!file)
        out.faults.push_back(
            cannot(path, std::string("cannot be opened: ") + std::strerror(errno), ""));
    else if (!read_all(file.get(), source->text))
        out.faults.push_back(
            cannot(path, std::string("cannot be read: ") + std::strerror(errno), ""));
    else if (check_text(source, out.faults))
        out.value = std::move(source);
    return out;
}

} // namespace pelt::read
