// SPDX-License-Identifier: MIT
// Prints a manual page from its template: pages TEMPLATE YYYY-MM-DD. The date is that of the
// version; SOURCE_DATE_EPOCH (reproducible-builds.org) stands above it.
#include "cli/man_page.hpp"
#include "model/error.hpp"

#include <cstdlib>
#include <exception>
#include <fstream>
#include <iostream>
#include <iterator>
#include <string>

namespace {

std::string date_of(const char* version_date) {
    const char* epoch = std::getenv("SOURCE_DATE_EPOCH");
    return epoch == nullptr || *epoch == '\0' ? version_date
                                              : pelt::cli::iso_date(std::stoll(epoch));
}

std::string contents_of(const char* path) {
    std::ifstream file(path, std::ios::binary);
    if (!file)
        throw pelt::ProgramError(std::string(path) + " cannot be opened");
    return {std::istreambuf_iterator<char>(file), {}};
}

} // namespace

int main(int argc, char** argv) {
    if (argc != 3) {
        std::cerr << "usage: pages TEMPLATE YYYY-MM-DD\n";
        return 2;
    }
    try {
        auto fillings = pelt::cli::manual_fillings();
        fillings["DATE"] = pelt::cli::mdoc_date(date_of(argv[2]));
        std::cout << pelt::cli::filled(contents_of(argv[1]), fillings) << std::flush;
        return std::cout ? 0 : 1;
    } catch (const std::exception& error) {
        std::cerr << argv[1] << ": " << error.what() << '\n';
        return 1;
    }
}
