// SPDX-License-Identifier: MIT
#include "cli/log.hpp"

#include <spdlog/sinks/stdout_sinks.h>
#include <spdlog/spdlog.h>

#include <memory>

namespace pelt::cli {

void start_log(int verbose) {
    auto logger =
        std::make_shared<spdlog::logger>("pelt", std::make_shared<spdlog::sinks::stderr_sink_st>());
    logger->set_pattern("debug: %v");
    logger->set_level(verbose >= 2 ? spdlog::level::debug : spdlog::level::off);
    spdlog::set_default_logger(std::move(logger));
}

void log_exception(const std::exception& error) {
    spdlog::debug("{}", error.what());
}

} // namespace pelt::cli
