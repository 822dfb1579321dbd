// SPDX-License-Identifier: GPL-3.0-or-later
// Writes the generated sample files into a folder that exists.
#include "samples/generate/samples.hpp"

#include <fstream>
#include <iostream>

int main(int count, char** words)
{
    if (count != 2) {
        std::cerr << "usage: quarterstep-samples FOLDER\n";
        return 2;
    }
    const std::string folder = words[1];
    const auto write = [&folder](const char* name, const std::string& text) {
        std::ofstream file(folder + "/" + name, std::ios::binary | std::ios::trunc);
        file << text << std::flush;
        if (!file)
            std::cerr << "cannot write " << folder << "/" << name << "\n";
        return static_cast<bool>(file);
    };
    const bool stockWritten = write("stock.yaml", quarterstep::samples::stockSample());
    const bool peopleWritten = write("people.csv", quarterstep::samples::peopleSample());
    const bool supplierWritten = write("supplier.yaml", quarterstep::samples::supplierSample());
    return stockWritten && peopleWritten && supplierWritten ? 0 : 4;
}
