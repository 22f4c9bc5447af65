// SPDX-License-Identifier: MIT
// Prints a manual page from its template: pages TEMPLATE YYYY-MM-DD. The date is that of the
// version; SOURCE_DATE_EPOCH (reproducible-builds.org) stands above it.
#include "cli/key_page.hpp"
#include "cli/man_page.hpp"
#include "model/error.hpp"

#include <cstdlib>
#include <exception>
#include <fstream>
#include <iostream>
#include <iterator>
#include <map>
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

bool ends_with(const std::string& text, const std::string& end) {
    return text.size() >= end.size() &&
           text.compare(text.size() - end.size(), end.size(), end) == 0;
}

/// The page of a kind of file has its keys, and the example that lies beside the template.
std::map<std::string, std::string> file_fillings(const std::string& path, const std::string& name,
                                                 pelt::read::In root) {
    const std::string folder = path.substr(0, path.rfind('/') + 1);
    return {{"KEYS", pelt::cli::key_lists(root)},
            {"EXAMPLE",
             pelt::cli::escaped(contents_of((folder + "example-" + name + ".yaml").c_str()))}};
}

std::map<std::string, std::string> vehicle_fillings(const std::string& path) {
    auto out = file_fillings(path, "vehicle", pelt::read::In::vehicle);
    out["LIMITS"] = pelt::cli::limit_list();
    return out;
}

std::map<std::string, std::string> fillings_of(const std::string& path) {
    if (ends_with(path, "pelt-vehicle.5.in"))
        return vehicle_fillings(path);
    if (ends_with(path, "pelt-film.5.in"))
        return file_fillings(path, "film", pelt::read::In::film);
    if (ends_with(path, "pelt-stock.5.in"))
        return file_fillings(path, "stock", pelt::read::In::stock);
    if (ends_with(path, "pelt-shop.5.in"))
        return file_fillings(path, "shop", pelt::read::In::shop);
    if (ends_with(path, "pelt-jobs.5.in"))
        return file_fillings(path, "jobs", pelt::read::In::jobs);
    if (ends_with(path, "pelt-measure.7.in"))
        return {};
    return pelt::cli::manual_fillings();
}

} // namespace

int main(int argc, char** argv) {
    if (argc != 3) {
        std::cerr << "usage: pages TEMPLATE YYYY-MM-DD\n";
        return 2;
    }
    try {
        auto fillings = fillings_of(argv[1]);
        fillings["DATE"] = pelt::cli::mdoc_date(date_of(argv[2]));
        std::cout << pelt::cli::filled(contents_of(argv[1]), fillings) << std::flush;
        return std::cout ? 0 : 1;
    } catch (const std::exception& error) {
        std::cerr << argv[1] << ": " << error.what() << '\n';
        return 1;
    }
}
