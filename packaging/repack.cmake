# SPDX-License-Identifier: MIT
# cpack writes its own file mask into the outermost headers of a package; dpkg-deb does not. So it
# packs again what cpack has made, and the same sources give the same bytes under any mask.
if(NOT CPACK_GENERATOR STREQUAL "DEB")
  return()
endif()
foreach(file ${CPACK_PACKAGE_FILES})
  set(folder ${CPACK_TEMPORARY_DIRECTORY}/again)
  file(REMOVE_RECURSE ${folder})
  foreach(step "dpkg-deb;--raw-extract;${file};${folder}" "chmod;0755;${folder};${folder}/DEBIAN"
      "dpkg-deb;--root-owner-group;-Zxz;--build;${folder};${file}")
    execute_process(COMMAND ${step} OUTPUT_QUIET COMMAND_ERROR_IS_FATAL ANY)
  endforeach()
  file(REMOVE_RECURSE ${folder})
endforeach()
